package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.CallLines.Line;
import org.hearthway.sign.Sign.Urgency;

/** The rows that call: the whole row is the link, and word, shape and weight say how urgent it is. */
class CallRows extends UnorderedList {

    CallRows(Reader reader, List<Line> lines) {
        addClassName("hw-calls");
        getElement().setAttribute("aria-label", reader.say("family.call.who"));
        lines.forEach(line -> add(Bits.el("li", "", row(reader, line))));
    }

    private static Component row(Reader reader, Line line) {
        return link(
                style(line.urgency()),
                line,
                icon(line.urgency()).draw(),
                Tags.span(
                        "",
                        Bits.el("b", "", reader.text(line.title())),
                        Bits.el("small", "", reader.large(reader.text(line.detail()))),
                        Bits.el("em", "", reader.text(line.call()))),
                Bits.el("i", "", Icon.PHONE.draw()));
    }

    /** A link that calls the line. */
    static Anchor link(String style, Line line, Component... parts) {
        var link = new Anchor(line.link());
        if (!style.isBlank()) {
            link.addClassNames(style.split(" "));
        }
        link.add(parts);
        link.setRouterIgnore(true);
        return link;
    }

    /** Those of the lines with these urgencies, in the order asked for. */
    static List<Line> only(List<Line> lines, Urgency... urgencies) {
        return List.of(urgencies).stream()
                .flatMap(urgency -> lines.stream().filter(line -> line.urgency() == urgency))
                .toList();
    }

    static String style(Urgency urgency) {
        return switch (urgency) {
            case NOW -> "now";
            case URGENT -> "urgent";
            case HOURS -> "hours";
        };
    }

    static Icon icon(Urgency urgency) {
        return switch (urgency) {
            case NOW -> Icon.NOW;
            case URGENT -> Icon.URGENT;
            case HOURS -> Icon.HOURS;
        };
    }
}
