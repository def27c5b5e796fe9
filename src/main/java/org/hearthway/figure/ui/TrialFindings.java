package org.hearthway.figure.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.hearthway.base.Language;
import org.hearthway.content.TriedFile.Mistake;
import org.hearthway.figure.FigureTrials.Trial;
import org.hearthway.figure.engine.Norms.Beyond;
import org.hearthway.figure.engine.Side;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** What stands against a file, with its line and what is written there, and angles that are worth a second look. */
final class TrialFindings extends Div {

    private final transient Words words;
    private final Language language;

    TrialFindings(Words words, Language language, String text, Trial trial) {
        this.words = words;
        this.language = language;
        if (trial.mistakes().isEmpty()) {
            add(Tags.div("hw-strip good", Icon.CHECK.draw("sm"), Tags.span("", say("good"))));
        } else {
            var lines = text.lines().toList();
            add(Tags.h2("", say("wrong", trial.mistakes().size())));
            var list = new UnorderedList();
            trial.mistakes().forEach(mistake -> list.add(item(mistake, lines)));
            add(list);
        }
        if (!trial.beyond().isEmpty()) {
            add(Tags.h2("", say("beyond")));
            var list = new UnorderedList();
            trial.beyond().forEach(beyond -> list.add(new ListItem(told(beyond))));
            add(list, Tags.p("hw-quiet", say("beyond.says")));
        }
    }

    private String say(String key, Object... args) {
        return words.say(language, "figure.try." + key, args);
    }

    private ListItem item(Mistake mistake, List<String> lines) {
        var item = new ListItem();
        item.add(Tags.span("hw-b", say("line", mistake.line())), Tags.span("", " " + mistake.says()));
        if (mistake.line() <= lines.size()) {
            item.add(Tags.span("hw-try-line", lines.get(mistake.line() - 1).strip()));
        }
        return item;
    }

    private String told(Beyond beyond) {
        var side = words.say(language, "figure.who." + (beyond.side() == Side.RIGHT ? "RIGHT" : "LEFT"));
        var way = beyond.joint().name() + (beyond.more() ? ".more" : ".less");
        return say(
                "beyond.one",
                side,
                words.say(language, "figure.try.joint." + way),
                Math.round(beyond.degrees()),
                words.say(language, "figure.try.years." + beyond.years()),
                Math.round(beyond.norm()));
    }
}
