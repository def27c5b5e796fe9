package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.function.Function;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;

/** Over the time line: how much of it is seen, and what its stones mean. */
final class LineHead extends Div {

    private final transient StageWords say;

    /** Draws it, with an address for each choice of how much is seen, and what turns comparing on and off. */
    LineHead(StageWords say, Zoom zoom, Function<Zoom, String> address, Anchor compare) {
        this.say = say;
        addClassNames("hw-colh", "hw-pathhead");
        var filters = Tags.div("hw-filters");
        filters.getElement().setAttribute("role", "group").setAttribute("aria-label", say.say("path.zoom"));
        for (var one : Zoom.values()) {
            var chip = Tags.link("hw-chip", address.apply(one), say.say("path.zoom." + one.name()));
            chip.getElement()
                    .setAttribute("aria-pressed", String.valueOf(one == zoom))
                    .setAttribute("role", "button");
            filters.add(chip);
        }
        add(
                filters,
                Tags.div("hw-filters", compare),
                Tags.span("grow", ""),
                key("st-done", "path.key.behind"),
                key("st-now", "path.key.now"),
                key("st-later", "path.key.later"));
    }

    private Component key(String stone, String says) {
        var picture = new SvgText("", 0, 0, 18, 16)
                .decorative()
                .shape("path", "class", stone, "d", Stone.outline(9, 8, 7.2, 5.9, 2));
        return Tags.span("hw-cell", new Drawing(picture), new Span(say.say(says)));
    }
}
