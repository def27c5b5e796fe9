package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hearthway.base.Language;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.program.engine.Pace;
import org.hearthway.program.engine.ProgramDiff;
import org.hearthway.program.engine.ProgramLine;

/** What the family will see: the news, then the day, in a language of the family. */
final class FamilyPeek extends Div {

    private final transient Say say;
    private final transient Pace pace;
    private final transient List<Language> languages;
    private final Div sheet = Tags.div("hw-peek");
    private final NativeButton turn = Tags.button("text", "", pressed -> turn());
    private int shown;
    private transient Runnable again = () -> {};

    FamilyPeek(Say say, Pace pace, List<Language> languages) {
        this.say = say;
        this.pace = pace;
        this.languages = List.copyOf(languages);
        var head = Tags.div("hw-colh", Tags.h2("", say.say("peek")), Tags.span("grow", ""));
        if (languages.size() > 1) {
            head.add(Keys.press(turn, "v"));
        }
        add(head, sheet);
    }

    private void turn() {
        shown = (shown + 1) % languages.size();
        again.run();
    }

    void follow(List<ProgramLine> before, List<ProgramLine> now, LocalDate effective, Set<String> accepted) {
        again = () -> draw(before, now, effective, accepted);
        again.run();
    }

    private void draw(List<ProgramLine> before, List<ProgramLine> now, LocalDate effective, Set<String> accepted) {
        var language = languages.get(shown);
        turn.setText(say.one("peek", languages.get((shown + 1) % languages.size())));
        sheet.removeAll();
        sheet.getElement().setAttribute("lang", language.tag());
        sheet.add(Tags.span("hw-sub", say.words().say(language, "program.peek.from", effective)));
        var diff = ProgramDiff.between(before, now);
        if (!diff.isEmpty()) {
            sheet.add(Tags.p("new", say.program().told(before, now, "").in(language)));
        }
        var hidden = 0;
        var told = new ArrayList<ProgramLine>();
        for (var line : now) {
            if (accepted.contains(line.exercise())) {
                told.add(line);
            } else {
                hidden++;
            }
        }
        told.forEach(line -> sheet.add(row(language, line)));
        if (told.isEmpty()) {
            sheet.add(Tags.p("hw-quiet", say.words().say(language, "program.peek.empty")));
        }
        if (hidden > 0) {
            sheet.add(Tags.p("hw-care", say.say("peek.hidden", hidden)));
        }
    }

    private Div row(Language language, ProgramLine line) {
        var words = say.program();
        var says = new Div();
        says.add(
                Tags.span("hw-b", words.name(language, line.exercise())),
                Tags.span("", words.dose(language, line)),
                Tags.span(
                        "",
                        say.words()
                                .say(
                                        language,
                                        "program.peek.days",
                                        words.days(language, line.days()),
                                        pace.minutes(line))));
        if (!line.note().isBlank()) {
            says.add(Tags.span("", say.words().say(language, "program.edit.quoted", line.note())));
        }
        var tick = new Span();
        tick.addClassName("hw-tick");
        tick.getElement().setAttribute("aria-hidden", "true");
        return Tags.div("row", Cells.figure(say, line.exercise(), line.side()), says, tick);
    }
}
