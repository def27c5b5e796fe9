package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.parts.Tags;
import org.hearthway.program.engine.Adherence;
import org.hearthway.program.engine.trend.RunChart;
import org.hearthway.program.engine.trend.Trends.Week;

/** The numbers behind the drawings, folded away on the screen until somebody asks, always there on paper. */
final class HowTables {

    private final HowSay say;

    HowTables(HowSay say) {
        this.say = say;
    }

    /** A button and what it unfolds. */
    Component folded(String label, Component table) {
        var box = Tags.div("hw-fold", table);
        var button = Tags.button("text u-short", say.say("table.show"), pressed -> {
            var open = !box.hasClassName("open");
            box.setClassName("open", open);
            pressed.getSource().setText(say.say(open ? "table.hide" : "table.show"));
            pressed.getSource().getElement().setAttribute("aria-expanded", String.valueOf(open));
        });
        button.getElement()
                .setAttribute("aria-expanded", "false")
                .setAttribute("aria-label", say.say("table.of", label));
        button.addClassName("hw-screen-only");
        return new Div(button, box);
    }

    Component weeks(String label, List<Week> weeks) {
        var table = table(label, "week", "done", "some", "excused", "not-done", "silent", "extra", "percent");
        weeks.forEach(week -> row(table, week(week)));
        return table;
    }

    private List<String> week(Week week) {
        return Stream.concat(Stream.of(say.date(week.begins())), numbers(week.adherence()).stream())
                .toList();
    }

    /** Done, in part, excused, not done, not reported, extra, percent. */
    List<String> numbers(Adherence adherence) {
        return List.of(
                String.valueOf(adherence.done()),
                String.valueOf(adherence.some()),
                String.valueOf(adherence.excused()),
                String.valueOf(adherence.notDone()),
                String.valueOf(adherence.notReported()),
                String.valueOf(adherence.extra()),
                say.percent(adherence.percent()));
    }

    /** A row for each week and a column for each of its days: the number, and on which side of the median it lies. */
    Component points(String label, RunChart chart) {
        var table = new NativeTable();
        var head = head(table, label);
        head.add(heading(say.say("column.week")));
        for (var day : DayOfWeek.values()) {
            head.add(heading(
                    say.words().shortWeekday(say.language(), LocalDate.EPOCH.with(TemporalAdjusters.nextOrSame(day)))));
        }
        var weeks = chart.points().stream()
                .collect(Collectors.groupingBy(
                        point -> point.day().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)),
                        TreeMap::new,
                        Collectors.toMap(point -> point.day().getDayOfWeek(), point -> point)));
        weeks.forEach((monday, points) -> row(
                table,
                Stream.concat(
                                Stream.of(say.shortDay(monday)),
                                Arrays.stream(DayOfWeek.values())
                                        .map(day -> Optional.ofNullable(points.get(day))
                                                .map(point -> say.one("side", side(chart, point), point.number()))
                                                .orElse("")))
                        .toList()));
        return table;
    }

    private static String side(RunChart chart, RunChart.Point point) {
        var side = Double.compare(point.number(), chart.median().doubleValue());
        return side > 0 ? "above" : side < 0 ? "below" : "on";
    }

    NativeTable table(String label, String... columns) {
        var table = new NativeTable();
        var head = head(table, label);
        Arrays.stream(columns).forEach(column -> head.add(heading(say.one("column", column))));
        return table;
    }

    private static NativeTableRow head(NativeTable table, String label) {
        table.addClassNames("hw-table", "hw-goes");
        table.getElement().setAttribute("aria-label", label);
        var head = new NativeTableRow();
        table.getHead().add(head);
        return head;
    }

    private static NativeTableHeaderCell heading(String words) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    void row(NativeTable table, List<String> cells) {
        var row = new NativeTableRow();
        cells.forEach(text -> row.add(new NativeTableCell(text)));
        table.getBody().add(row);
    }

    /** A row that begins with a part instead of words. */
    void row(NativeTable table, Component first, List<String> cells) {
        var row = new NativeTableRow();
        row.add(new NativeTableCell(first));
        cells.forEach(text -> row.add(new NativeTableCell(text)));
        table.getBody().add(row);
    }
}
