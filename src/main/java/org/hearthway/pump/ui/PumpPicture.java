package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.Reservoir;

/** The forecast as a chart, and on request as a table. */
final class PumpPicture extends Div {

    PumpPicture(PumpFigures figures, Reservoir reservoir, RefillWindow window, PumpReading reading) {
        var say = figures.words();
        var wide = new ForecastChart(figures, reservoir, window, reading.today(), false).draw(reading.now());
        wide.addClassName("hw-wide");
        var narrow = new ForecastChart(figures, reservoir, window, reading.today(), true).draw(reading.now());
        narrow.addClassName("hw-narrow");
        var chart = Tags.div("hw-forecast", wide, narrow);
        var table =
                PumpView.scroll(say.say("pump.chart.table"), new ForecastTable(figures, reservoir, window, reading));
        table.setId("pump-table");
        table.setVisible(false);
        var other = Tags.button("text", say.say("pump.chart.show-table"), pressed -> {
            table.setVisible(!table.isVisible());
            pressed.getSource().setText(say.say(table.isVisible() ? "pump.chart.hide-table" : "pump.chart.show-table"));
            pressed.getSource().getElement().setAttribute("aria-expanded", Boolean.toString(table.isVisible()));
        });
        other.getElement().setAttribute("aria-expanded", "false");
        addClassName("hw-pumppicture");
        add(
                Tags.div(
                        "hw-colh",
                        Tags.h2("", say.say("pump.chart.title")),
                        Tags.span(
                                "hw-sub",
                                say.say(
                                        "pump.chart.from",
                                        say.date(figures.day(reservoir.filling().at())))),
                        Tags.span("grow", ""),
                        other),
                chart,
                table);
    }
}
