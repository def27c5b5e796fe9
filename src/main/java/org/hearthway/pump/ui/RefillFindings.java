package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.hearthway.parts.Tags;
import org.hearthway.pump.PumpOutlook.Found;
import org.hearthway.pump.engine.Residual;
import org.hearthway.pump.engine.ResidualRules;

/** What was left at each refill against what was expected: plotted, as a table, and what is usually checked. */
final class RefillFindings extends Div {

    private static final List<String> COLUMNS = List.of("day", "expected", "measured", "difference", "ratio", "flag");
    private static final Set<String> NUMBERS = Set.of("expected", "measured", "difference", "ratio");
    private static final int THINGS = 5;

    private final transient PumpFigures figures;
    private final transient PumpWords say;

    RefillFindings(PumpFigures figures, List<Found> refills, ResidualRules rules) {
        this.figures = figures;
        this.say = figures.words();
        addClassName("hw-found");
        add(Tags.div("hw-colh", Tags.h2("", say.say("pump.chart.refills"))));
        add(Tags.p("hw-sub", limits(rules)));
        if (refills.isEmpty()) {
            add(Tags.p("hw-quiet", say.say("pump.chart.refills.none")));
            return;
        }
        var inTime = new ArrayList<>(refills);
        Collections.reverse(inTime);
        var both = Tags.div("hw-ratios");
        if (inTime.stream().anyMatch(found -> found.residual().ratio().isPresent())) {
            both.add(new RatioChart(figures, inTime, rules).draw());
        }
        both.add(PumpView.scroll(say.say("pump.chart.refills"), table(refills)));
        add(both);
        var last = refills.get(0).residual();
        if (last.flagged()) {
            add(usual(last.look()));
        }
    }

    /** The clinic's limits, beside what rests on them. */
    private String limits(ResidualRules rules) {
        var planned = rules.basis() == ResidualRules.Basis.PLANNED_DELIVERY;
        return say.say(
                planned ? "pump.chart.limits.planned" : "pump.chart.limits.expected",
                figures.result(rules.volume()),
                rules.percent());
    }

    private NativeTable table(List<Found> refills) {
        var table = new NativeTable();
        table.addClassNames("hw-table", "u-edged");
        var head = new NativeTableRow();
        for (var column : COLUMNS) {
            var cell = new NativeTableHeaderCell(say.say("pump.chart.refills." + column));
            cell.getElement().setAttribute("scope", "col");
            if (NUMBERS.contains(column)) {
                cell.addClassName("r");
            }
            head.add(cell);
        }
        table.getHead().add(head);
        refills.forEach(found -> table.getBody().add(row(found)));
        return table;
    }

    private NativeTableRow row(Found found) {
        var residual = found.residual();
        var row = new NativeTableRow();
        row.add(new NativeTableCell(say.date(found.day())));
        var figuresOf = List.of(
                figures.result(residual.expected()),
                figures.result(residual.measured()),
                figures.signed(residual.difference()),
                residual.ratio().map(figures::result).orElse(say.say("pump.chart.refills.no-ratio")));
        for (var told : figuresOf) {
            var cell = new NativeTableCell(told);
            cell.addClassName("r");
            row.add(cell);
        }
        var flag = new NativeTableCell(say.say("pump.chart.look." + residual.look()));
        if (residual.flagged()) {
            flag.addClassName("hw-b");
        }
        row.add(flag);
        return row;
    }

    private Div usual(Residual.Look look) {
        var list = new UnorderedList();
        for (var i = 1; i <= THINGS; i++) {
            list.add(new ListItem(say.say("pump.chart.usual." + look + "." + i)));
        }
        return Tags.div(
                "hw-usual",
                Tags.span("hw-b", say.say("pump.chart.usual." + look)),
                list,
                Tags.p("hw-sub", say.say("pump.chart.usual.source")));
    }
}
