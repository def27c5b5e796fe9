package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.dom.Element;
import org.hearthway.figure.Figure;
import org.hearthway.parts.Still;
import org.hearthway.parts.Tags;
import org.hearthway.program.Exercise;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.engine.ProgramLine.Side;

/** Small parts of the program's table. */
final class Cells {

    /** The tone of skin that the picture's author chose. */
    private static final int AS_DRAWN = 0;

    private Cells() {}

    static NativeTableCell cell(String classes, Component... content) {
        var cell = new NativeTableCell();
        cell.add(content);
        if (!classes.isBlank()) {
            cell.addClassNames(classes.split(" "));
        }
        return cell;
    }

    /** A number's former value, struck. */
    static Element struck(String was) {
        return new Element("s").setText(was);
    }

    /** The exercise's figure; empty ground where the library does not know it. The name stands beside it. */
    static Div figure(Say say, String exercise, Side side) {
        var well = Tags.div("hw-well");
        say.library().find(exercise).map(Exercise::figure).ifPresent(figure -> {
            var address = figure.address(Figure.Shown.END, side == Side.LEFT, AS_DRAWN, say.language());
            well.add(Still.of(address, figure.ratio(), Still.Pose.END, ""));
        });
        return well;
    }

    /** Seven stones of days gone by. */
    static Component trail(Say say, LastDays days, String exercise) {
        var trail = Tags.span("hw-trail");
        days.of(exercise).forEach(stone -> trail.getElement().appendChild(pip(stone)));
        trail.getElement().setAttribute("role", "img");
        trail.getElement()
                .setAttribute(
                        "aria-label",
                        say.say(
                                "trail",
                                days.count(exercise, org.hearthway.program.HomeWeek.Outcome.DONE),
                                days.count(exercise, org.hearthway.program.HomeWeek.Outcome.SOME),
                                days.count(exercise, org.hearthway.program.HomeWeek.Outcome.COULD_NOT)));
        return trail;
    }

    private static Element pip(LastDays.Stone stone) {
        var pip = new Element("i");
        var classes = stone.said()
                .map(Entry::outcome)
                .map(outcome -> switch (outcome) {
                    case DONE -> "hw-pip done";
                    case SOME -> "hw-pip some";
                    case COULD_NOT -> "hw-pip miss";
                })
                .orElse(stone.planned() ? "hw-pip" : "none");
        return pip.setAttribute("class", classes);
    }
}
