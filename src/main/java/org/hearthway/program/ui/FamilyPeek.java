package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.hearthway.base.Language;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.program.Exercise;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.engine.Pace;
import org.hearthway.program.engine.ProgramDiff;
import org.hearthway.program.engine.ProgramLine;

/** What the family will see, in a language of the family: the news with all exercises, the week, the page of one. */
final class FamilyPeek extends Div {

    /** Which of its pages. */
    private enum Page {
        ALL,
        WEEK,
        ONE
    }

    /** What it shows. */
    private record Shown(
            List<ProgramLine> before,
            List<ProgramLine> now,
            LocalDate effective,
            String toFamily,
            Optional<FamilyTimes.Trial> trial,
            Set<String> accepted) {

        /** The lines that reach the family. */
        List<ProgramLine> lines() {
            return now.stream()
                    .filter(line -> accepted.contains(line.exercise()))
                    .toList();
        }
    }

    private static final List<Page> PAGES = List.of(Page.values());
    private static final int DAYS = 7;

    private final transient Say say;
    private final transient Pace pace;
    private final transient List<Language> languages;
    private final Div sheet = Tags.div("hw-peek");
    private final NativeButton turn = Tags.button("text", "", pressed -> turn());
    private final Map<Page, NativeButton> pages = new EnumMap<>(Page.class);
    private final Div which = new Div();
    private int language;
    private Page page = Page.ALL;
    private String exercise = "";
    private transient Optional<Shown> shown = Optional.empty();

    FamilyPeek(Say say, Pace pace, List<Language> languages) {
        this.say = say;
        this.pace = pace;
        this.languages = List.copyOf(languages);
        var buttons = Tags.div("hw-turns");
        buttons.getElement().setAttribute("role", "group").setAttribute("aria-label", say.say("peek"));
        for (var one : PAGES) {
            var button = Tags.bare("hw-word", say.one("peek.page", one), pressed -> open(one));
            pages.put(one, button);
            buttons.add(button);
        }
        if (languages.size() > 1) {
            buttons.add(Keys.press(turn, "v"));
        }
        add(Tags.div("hw-colh", Tags.h2("", say.say("peek"))), buttons, which, sheet);
    }

    private void turn() {
        language = (language + 1) % languages.size();
        shown.ifPresent(this::draw);
    }

    private void open(Page other) {
        page = other;
        shown.ifPresent(this::draw);
    }

    void follow(
            List<ProgramLine> before,
            List<ProgramLine> now,
            LocalDate effective,
            String toFamily,
            Optional<FamilyTimes.Trial> trial,
            Set<String> accepted) {
        var next = new Shown(before, now, effective, toFamily.strip(), trial, accepted);
        shown = Optional.of(next);
        draw(next);
    }

    private Language language() {
        return languages.get(language);
    }

    private String family(String key, Object... args) {
        return say.words().say(language(), "program.peek." + key, args);
    }

    private void draw(Shown program) {
        turn.setText(say.one("peek", languages.get((language + 1) % languages.size())));
        var next = PAGES.get((PAGES.indexOf(page) + 1) % PAGES.size());
        pages.forEach((one, button) -> {
            button.getElement().setAttribute("aria-pressed", String.valueOf(one == page));
            // the key leads on to the next page
            Keys.press(button, one == next ? "p" : "");
        });
        which.removeAll();
        sheet.removeAll();
        sheet.getElement().setAttribute("lang", language().tag());
        switch (page) {
            case ALL -> all(program);
            case WEEK -> week(program);
            case ONE -> one(program);
        }
        if (program.lines().isEmpty()) {
            sheet.add(Tags.p("hw-quiet", family("empty")));
        }
        var hidden = program.now().size() - program.lines().size();
        if (hidden > 0) {
            sheet.add(Tags.p("hw-care", say.say("peek.hidden", hidden)));
        }
    }

    private void all(Shown next) {
        sheet.add(Tags.span("hw-sub", family("from", next.effective())));
        if (!ProgramDiff.between(next.before(), next.now()).isEmpty()
                || !next.toFamily().isBlank()) {
            sheet.add(Tags.p(
                    "new",
                    say.program()
                            .told(next.before(), next.now(), next.toFamily())
                            .in(language())));
        }
        next.lines().forEach(line -> sheet.add(row(line)));
    }

    private Div row(ProgramLine line) {
        var words = say.program();
        var says = new Div();
        says.add(
                Tags.span("hw-b", words.name(language(), line.exercise())),
                Tags.span("", words.dose(language(), line)),
                Tags.span("", family("days", words.days(language(), line), pace.minutes(line))));
        if (!line.note().isBlank()) {
            says.add(Tags.span("", say.words().say(language(), "program.edit.quoted", line.note())));
        }
        var tick = new Span();
        tick.addClassName("hw-tick");
        tick.getElement().setAttribute("aria-hidden", "true");
        return Tags.div("row", Cells.figure(say, line.exercise(), line.side()), says, tick);
    }

    /** Its first seven days, as they would be laid out over the family's times. */
    private void week(Shown program) {
        IntStream.range(0, DAYS).mapToObj(program.effective()::plusDays).forEach(day -> {
            var says = new Div();
            var here = program.trial()
                    .map(trial -> tried(program, trial, day))
                    .orElseGet(() -> program.lines().stream()
                            .filter(line -> line.isOn(day))
                            .map(line -> new Placed(line, Optional.empty()))
                            .toList());
            says.add(Tags.span(
                    "hw-b",
                    family(
                            "day",
                            day,
                            minutes(here.stream().map(Placed::line).distinct().toList()))));
            if (here.isEmpty()) {
                says.add(Tags.span("", family("rest")));
            }
            here.forEach(one -> says.add(Tags.span("", told(one))));
            sheet.add(Tags.div("day", says));
        });
        program.trial().stream()
                .flatMap(trial -> trial.out().stream())
                .forEach(out -> sheet.add(Tags.p(
                        "hw-care",
                        say.say(
                                "peek.out",
                                out.exercise().name().in(say.language()),
                                out.out().sessions()))));
    }

    /** A line on a day, at its time. */
    private record Placed(ProgramLine line, Optional<LocalTime> start) {}

    private static List<Placed> tried(Shown program, FamilyTimes.Trial trial, LocalDate day) {
        return trial.sessions().stream()
                .filter(one -> one.day() == day.getDayOfWeek())
                .map(one -> new Placed(program.now().get(one.line()), one.start()))
                .filter(one -> one.line().isOn(day)
                        && program.accepted().contains(one.line().exercise()))
                .toList();
    }

    private String told(Placed one) {
        var name = say.program().name(language(), one.line().exercise());
        return one.start()
                .map(start -> family("at", say.words().time(language(), start), name))
                .orElse(name);
    }

    private int minutes(List<ProgramLine> lines) {
        return lines.stream().mapToInt(pace::minutes).sum();
    }

    private void one(Shown next) {
        var lines = next.lines();
        if (lines.isEmpty()) {
            return;
        }
        var line = lines.stream()
                .filter(one -> one.exercise().equals(exercise))
                .findFirst()
                .orElse(lines.get(0));
        which.add(new Choose(say.say("peek.which"), lines, line, one -> say.name(one.exercise()), one -> {
            exercise = one.exercise();
            shown.ifPresent(this::draw);
        }));
        say.library().find(line.exercise()).ifPresent(known -> sheet.add(sheetOf(known, line)));
    }

    private Component sheetOf(Exercise known, ProgramLine line) {
        var says = Tags.div("one");
        says.add(
                Cells.figure(say, line.exercise(), line.side()),
                Tags.span("hw-b", known.name().in(language())),
                Tags.span("", known.purpose().in(language())),
                Tags.span("hw-b", say.program().dose(language(), line)));
        line.prescription().effort().ifPresent(effort -> says.add(Tags.span("", family("effort", effort))));
        if (!line.note().isBlank()) {
            says.add(Tags.span("", say.words().say(language(), "program.edit.quoted", line.note())));
        }
        var steps = new OrderedList();
        known.steps().forEach(step -> steps.add(new ListItem(step.in(language()))));
        var stop = Tags.span("stop", Icon.PAUSE.draw("sm"));
        stop.add(new Span(known.stop().in(language())));
        says.add(steps, stop);
        return says;
    }
}
