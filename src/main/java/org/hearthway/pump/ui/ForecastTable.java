package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.time.Instant;
import java.util.List;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.Reservoir;

/** The forecast as a table: what is in the reservoir at the fill, at each change, each week, today, and what days mean. */
final class ForecastTable extends NativeTable {

    private final transient PumpFigures figures;
    private final transient Reservoir reservoir;

    ForecastTable(PumpFigures figures, Reservoir reservoir, RefillWindow window, PumpReading reading) {
        this.figures = figures;
        this.reservoir = reservoir;
        addClassNames("hw-table", "u-edged");
        var head = new NativeTableRow();
        for (var key : List.of("pump.chart.table.day", "pump.chart.table.volume", "pump.chart.table.what")) {
            var cell = new NativeTableHeaderCell(figures.words().say(key));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        getHead().add(head);
        new ForecastRows(figures, reservoir, window, reading.now(), reading.mayRecord())
                .all()
                .forEach(this::row);
    }

    private void row(Instant at, List<String> what) {
        var row = new NativeTableRow();
        var volume = new NativeTableCell(figures.result(reservoir.at(at)));
        volume.addClassName("r");
        row.add(
                new NativeTableCell(figures.words().date(figures.day(at))),
                volume,
                new NativeTableCell(String.join("; ", what)));
        getBody().add(row);
    }
}
