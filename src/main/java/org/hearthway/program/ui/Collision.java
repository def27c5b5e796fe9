package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.engine.ProgramDiff;
import org.hearthway.program.engine.ProgramDiff.LineDiff;
import org.hearthway.program.engine.ProgramLine;

/** Two people saved at once: theirs and mine side by side, line by line, each difference with a way to take it over. */
final class Collision extends Div {

    /** What the panel asks of its page. */
    interface Acts {
        /** Puts their line in place of mine, or adds it when mine is empty, or takes mine out when theirs is. */
        void takeOver(Optional<Integer> mine, Optional<ProgramLine> theirs);

        /** Puts all their lines in place of mine. */
        void takeAll();
    }

    private final transient Say say;
    private final transient Acts acts;

    Collision(Say say, Acts acts) {
        this.say = say;
        this.acts = acts;
        addClassName("hw-collision");
        getElement().setAttribute("role", "alert");
    }

    /**
     * Draws both versions.
     *
     * @param who who saved theirs
     * @param number of theirs
     * @param reason of theirs
     */
    void show(String who, int number, String reason, List<ProgramLine> theirs, List<ProgramLine> mine) {
        removeAll();
        var says = Tags.div(
                "",
                Tags.span("hw-b", say.say("theirs.title", who, number)),
                new Span(" " + say.say("theirs.kept", number + 1)));
        add(Tags.div("hw-banner u-mb2", Icon.CLASH.draw(), says));
        if (!reason.isBlank()) {
            add(Tags.p("hw-sub u-mb2", say.say("theirs.reason", reason)));
        }
        var table = new NativeTable();
        table.addClassNames("hw-table", "hw-versions");
        var head = new NativeTableRow();
        head.add(
                head(say.say("theirs.exercise")), head(say.say("theirs.theirs", number)), head(say.say("theirs.mine")));
        head.add(head(say.say("theirs.do")));
        table.getHead().add(head);
        var diff = ProgramDiff.between(theirs, mine);
        for (int i = 0; i < diff.lines().size(); i++) {
            var line = diff.lines().get(i);
            var at = line.after().isPresent() ? Optional.of(i) : Optional.<Integer>empty();
            table.getBody().add(row(line, at));
        }
        add(Tags.div("hw-scroll", table));
        if (!diff.isEmpty()) {
            add(Tags.div(
                    "u-row u-my2",
                    Tags.button("plain", say.say("theirs.all"), pressed -> acts.takeAll()),
                    Tags.span("hw-sub", say.say("theirs.hint", number + 1))));
        } else {
            add(Tags.p("hw-quiet u-my2", say.say("theirs.same")));
        }
    }

    private static NativeTableHeaderCell head(String says) {
        var cell = new NativeTableHeaderCell(says);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    private NativeTableRow row(LineDiff diff, Optional<Integer> mine) {
        var row = new NativeTableRow();
        var differs = diff.isNew() || diff.isTakenOut() || !diff.fields().isEmpty();
        row.setClassName("differs", differs);
        row.add(
                Cells.cell("", Tags.span("hw-b", say.name(diff.line().exercise()))),
                Cells.cell("", side(diff.before(), diff)),
                Cells.cell("", side(diff.after(), diff)),
                differs ? Cells.cell("", take(diff, mine)) : Cells.cell("", new Span(say.say("theirs.equal"))));
        return row;
    }

    private Component side(Optional<ProgramLine> line, LineDiff diff) {
        return line.map(l -> (Component) LineStory.of(say, l, diff.fields()))
                .orElseGet(() -> Tags.span("hw-sub", say.say("theirs.not")));
    }

    private Component take(LineDiff diff, Optional<Integer> mine) {
        var key = diff.isNew() ? "theirs.drop" : diff.isTakenOut() ? "theirs.add" : "theirs.take";
        var button = Tags.button("plain", say.say(key), pressed -> acts.takeOver(mine, diff.before()));
        button.getElement()
                .setAttribute(
                        "aria-label", say.say(key + ".for", say.name(diff.line().exercise())));
        return button;
    }
}
