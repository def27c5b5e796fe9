package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import java.util.function.Consumer;
import org.hearthway.parts.Tags;
import org.hearthway.path.ClinicValues.Change;
import org.hearthway.path.ClinicValues.Line;
import org.hearthway.path.ClinicValues.PathOfClinic;

/** What was changed in a path's values, newest first: what, when, by whom, why. */
final class ValueChangeList extends Div {

    /** So many values of a change stand open; more are folded. */
    private static final int OPEN = 3;

    private final transient ValueSay say;

    ValueChangeList(ValueSay say, PathOfClinic path, Consumer<Change> takeBack) {
        this.say = say;
        add(Tags.h2("hw-kind", say.say("path.values.history")));
        if (path.changes().isEmpty()) {
            add(Tags.p("hw-quiet", say.say("path.values.history.none")));
        }
        path.changes().forEach(change -> add(change(change, takeBack)));
    }

    private Component change(Change change, Consumer<Change> takeBack) {
        var lines = Tags.div(change.undone() ? "u-struck" : "");
        change.lines().stream().limit(OPEN).forEach(line -> lines.add(line(line)));
        if (change.lines().size() > OPEN) {
            var more = new Div();
            change.lines().stream().skip(OPEN).forEach(line -> more.add(line(line)));
            lines.add(new NativeDetails(
                    say.say("path.values.history.more", change.lines().size() - OPEN), more));
        }
        var said = Tags.div("", Tags.p("hw-sub", say.since(change.at(), change.by())), Tags.p("", change.reason()));
        var head = Tags.div("");
        if (change.undoes().isPresent()) {
            head.add(Tags.span("hw-label line", say.say("path.values.history.undo")));
        }
        if (change.undone()) {
            head.add(Tags.span("hw-label line", say.say("path.decided.undone")));
        }
        var row = Tags.div("hw-value-row", Tags.div("", head, lines, said));
        if (!change.undone()) {
            var press = Tags.button("text", say.say("path.decided.take-back"), pressed -> takeBack.accept(change));
            press.getElement().setAttribute("aria-label", say.say("path.values.take-back.this", say.day(change.at())));
            row.add(press);
        }
        return row;
    }

    private Component line(Line line) {
        var after = line.after().map(say::amount).orElseGet(() -> say.say("path.values.history.shipped"));
        return Tags.p("", say.say("path.values.history.line", say.in(line.name()), say.amount(line.before()), after));
    }
}
