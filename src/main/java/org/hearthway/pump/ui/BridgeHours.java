package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.Bridge;
import org.hearthway.pump.engine.Bridge.Hour;

/** What reaches the child hour by hour, with the bridge and without it, as a picture and as a table. */
final class BridgeHours extends Div {

    private static final double WIDTH = 360;
    private static final double HEIGHT = 170;
    private static final double LEFT = 40;
    private static final double TOP = 24;
    private static final double BOTTOM = 140;
    private static final int MOST_HOURS = 240;
    private static final int ROWS = 24;

    private final transient FormSay say;

    BridgeHours(FormSay say, Bridge bridge) {
        this.say = say;
        addClassName("hw-bridge");
        var without = bridge.without().lasts().forPlot();
        var shown = (int) Math.ceil(Math.max(bridge.lasts().forPlot(), without) * 1.15) + 1;
        var hours = bridge.hours(Math.min(MOST_HOURS, Math.max(ROWS, shown)));
        add(
                picture(hours),
                Tags.p("hw-sub", say.say("pump.form.bridge.legend")),
                new NativeDetails(say.say("pump.form.bridge.table"), scroll(table(hours))));
    }

    private Div scroll(NativeTable table) {
        var box = Tags.div("hw-scroll", table);
        box.getElement()
                .setAttribute("role", "region")
                .setAttribute("tabindex", "0")
                .setAttribute("aria-label", say.say("pump.form.bridge.table"));
        return box;
    }

    private Drawing picture(List<Hour> hours) {
        var most = hours.stream()
                .mapToDouble(hour ->
                        Math.max(hour.bridged().forPlot(), hour.unbridged().forPlot()))
                .max()
                .orElse(1);
        var top = most * 1.1;
        var picture = new SvgText("u-block", 0, 0, WIDTH, HEIGHT).named(say.say("pump.form.bridge.picture"));
        picture.shape(
                "path",
                "class",
                "hw-bridge-axis",
                "d",
                "M" + n(LEFT) + " " + n(TOP) + "V" + n(BOTTOM) + "H" + n(WIDTH));
        picture.text(LEFT, 14, "ch-t", "middle", say.say("pump.form.bridge.axis"));
        picture.text(LEFT - 5, y(most, top) + 4, "ch-t", "end", one(most));
        picture.text(LEFT - 5, BOTTOM, "ch-t", "end", "0");
        for (var hour = 0; hour <= hours.size(); hour += every(hours.size())) {
            picture.text(x(hour, hours.size()), BOTTOM + 16, "ch-t", "middle", say.say("pump.form.bridge.hour", hour));
        }
        picture.shape(
                "path",
                "class",
                "hw-bridge-without",
                "d",
                line(hours, top, hour -> hour.unbridged().forPlot()));
        picture.shape(
                "path",
                "class",
                "hw-bridge-with",
                "d",
                line(hours, top, hour -> hour.bridged().forPlot()));
        return new Drawing(picture);
    }

    private static int every(int hours) {
        return hours <= 48 ? 12 : hours <= 120 ? 24 : 48;
    }

    private static String line(List<Hour> hours, double top, ToDoubleFunction<Hour> received) {
        var path = new StringBuilder();
        for (var hour : hours) {
            var y = n(y(received.applyAsDouble(hour), top));
            path.append(path.isEmpty() ? "M" + n(x(hour.hour(), hours.size())) + " " + y : "V" + y)
                    .append('H')
                    .append(n(x(hour.hour() + 1, hours.size())));
        }
        return path.toString();
    }

    private static double x(int hour, int hours) {
        return LEFT + (WIDTH - LEFT - 10) * hour / hours;
    }

    private static double y(double micrograms, double top) {
        return BOTTOM - (BOTTOM - TOP) * micrograms / top;
    }

    private static String n(double coordinate) {
        return SvgText.number(coordinate);
    }

    private String one(double micrograms) {
        return say.say("pump.form.bridge.micrograms", micrograms);
    }

    private NativeTable table(List<Hour> hours) {
        var table = new NativeTable();
        table.addClassNames("hw-table", "u-edged");
        var head = new NativeTableRow();
        for (var key : List.of("from", "with", "without")) {
            var cell = new NativeTableHeaderCell(say.say("pump.form.bridge.head." + key));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        for (var hour : hours) {
            var row = new NativeTableRow();
            row.add(
                    new NativeTableCell(say.say("pump.form.bridge.hour", hour.hour())),
                    new NativeTableCell(say.figures().result(hour.bridged())),
                    new NativeTableCell(say.figures().result(hour.unbridged())));
            table.getBody().add(row);
        }
        return table;
    }
}
