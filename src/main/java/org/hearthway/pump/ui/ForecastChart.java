package org.hearthway.pump.ui;

import static org.hearthway.parts.SvgText.number;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.TreeSet;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.Reservoir;

/**
 * What is in the reservoir from the last fill on: a line up to today, dotted from there, with the alarm volume, the
 * window of the refill and the alarm date of the print-out. It repeats what {@link ForecastTable} says.
 */
final class ForecastChart {

    private static final double WIDE = 560;
    private static final double NARROW = 352;
    private static final double HEIGHT = 310;
    private static final double LEFT = 40;
    private static final double EDGE = 16;
    private static final double TOP = 66;
    private static final double BOTTOM = 276;
    private static final int POINTS = 120;
    private static final int FEW = 25;
    private static final double MONTH = 30;
    private static final double LABEL = 56;
    private static final double LETTER = 6.4;

    private final double width;
    private final double right;
    private final PumpFigures figures;
    private final ZoneId zone;
    private final Reservoir reservoir;
    private final RefillWindow window;
    private final LocalDate first;
    private final LocalDate end;

    ForecastChart(PumpFigures figures, Reservoir reservoir, RefillWindow window, LocalDate today, boolean narrow) {
        this.width = narrow ? NARROW : WIDE;
        this.right = width - EDGE;
        this.figures = figures;
        this.zone = figures.zone();
        this.reservoir = reservoir;
        this.window = window;
        this.first = figures.day(reservoir.filling().at());
        // a pump that gives next to nothing would stretch the line over years: the drug's life bounds it
        var last = reservoir
                .empty()
                .map(empty -> figures.day(empty.at()))
                .filter(day -> day.isBefore(window.lifeEnds()))
                .orElse(window.lifeEnds());
        this.end = latest(last, latest(window.day(), today)).plusDays(1);
    }

    Drawing draw(Instant now) {
        var say = figures.words();
        var picture = new SvgText("u-block", 0, 0, width, HEIGHT)
                .named(say.say(
                        "pump.chart.label",
                        say.date(first),
                        figures.result(reservoir.at(now)),
                        say.date(window.opens()),
                        say.date(window.day())));
        axis(picture);
        var from = x(window.opens());
        var to = Math.max(from + 3, x(window.day().plusDays(1)));
        picture.shape(
                "rect",
                "class",
                "ch-win",
                "x",
                number(from),
                "y",
                number(TOP),
                "width",
                number(to - from),
                "height",
                number(BOTTOM - TOP));
        picture.shape("path", "class", "ch-wine", "d", line(from, TOP, from, BOTTOM) + line(to, TOP, to, BOTTOM));
        var past = path(reservoir.filling().at(), now);
        picture.shape("path", "class", "ch-area", "d", past + "L" + at(x(now), BOTTOM) + "L" + at(LEFT, BOTTOM) + "Z");
        var alarm = y(reservoir.pump().alarm().forPlot());
        picture.shape("path", "class", "ch-lim", "d", line(LEFT, alarm, right, alarm));
        picture.shape("path", "class", "ch-line", "d", past);
        picture.shape(
                "path", "class", "ch-fc", "d", path(now, end.atStartOfDay(zone).toInstant()));
        picture.shape("path", "class", "sv-ink", "stroke-width", "1.5", "d", line(x(now), TOP - 16, x(now), BOTTOM));
        dot(
                picture,
                "ch-dot",
                x(reservoir.filling().at()),
                reservoir.filling().volume().forPlot());
        dot(picture, "ch-ring", x(now), reservoir.at(now).forPlot());
        text(picture, (from + to) / 2, 31, say.say("pump.chart.window", day(window.opens()), day(window.day())));
        text(picture, x(now), 48, say.say("pump.chart.today", figures.result(reservoir.at(now))));
        text(
                picture,
                LEFT + 90,
                alarm - 6,
                say.say("pump.chart.alarm", figures.result(reservoir.pump().alarm())));
        window.printOut().ifPresent(check -> printOut(picture, check.printed()));
        return new Drawing(picture);
    }

    private void printOut(SvgText picture, LocalDate printed) {
        if (!printed.isAfter(end)) {
            picture.shape("path", "class", "ch-print", "d", line(x(printed), 20, x(printed), BOTTOM));
            text(picture, x(printed), 14, figures.words().say("pump.chart.printed", day(printed)));
        }
    }

    private void axis(SvgText picture) {
        var all = reservoir.pump().reservoir().forPlot();
        picture.text(LEFT - 8, TOP - 18, "ch-t", "end", figures.words().say("pump.chart.unit"));
        for (var mark = 0; mark <= all; mark += all > FEW ? 10 : 5) {
            picture.shape("path", "class", "ch-ax", "d", line(LEFT, y(mark), right, y(mark)));
            picture.text(LEFT - 8, y(mark) + 4, "ch-t", "end", Integer.toString(mark));
        }
        var months = (int) Math.ceil(ChronoUnit.DAYS.between(first, end) / MONTH * LABEL / (right - LEFT));
        picture.text(LEFT, BOTTOM + 20, "ch-t", "start", day(first));
        for (var day = first.withDayOfMonth(1).plusMonths(1); day.isBefore(end); day = day.plusMonths(months)) {
            picture.shape("path", "class", "ch-ax2", "d", line(x(day), BOTTOM, x(day), BOTTOM + 5));
            if (x(day) > LEFT + 70 && x(day) < right - 20) {
                picture.text(x(day), BOTTOM + 20, "ch-t", "middle", day(day));
            }
        }
    }

    private String day(LocalDate day) {
        return figures.words().shortDate(day);
    }

    /** The volume at every programming, and often enough in between that a schedule's steps do not matter. */
    private String path(Instant from, Instant to) {
        var moments = new TreeSet<Instant>();
        var seconds = Math.max(0, ChronoUnit.SECONDS.between(from, to));
        for (var i = 0; i <= POINTS; i++) {
            moments.add(from.plusSeconds(seconds * i / POINTS));
        }
        reservoir.nodes().stream()
                .map(Reservoir.Node::at)
                .filter(at -> at.isAfter(from) && at.isBefore(to))
                .forEach(moments::add);
        var path = new StringBuilder();
        for (var moment : moments) {
            path.append(path.isEmpty() ? "M" : "L")
                    .append(at(x(moment), y(reservoir.at(moment).forPlot())));
        }
        return path.toString();
    }

    private void dot(SvgText picture, String look, double x, double volume) {
        picture.shape("circle", "class", look, "cx", number(x), "cy", number(y(volume)), "r", "5");
    }

    private void text(SvgText picture, double x, double y, String says) {
        var half = says.length() * LETTER / 2;
        picture.text(Math.max(half, Math.min(width - half, x)), y, "ch-tb", "middle", says);
    }

    private static String line(double x, double y, double toX, double toY) {
        return "M" + at(x, y) + "L" + at(toX, toY);
    }

    private static String at(double x, double y) {
        return number(x) + " " + number(y);
    }

    private double x(LocalDate day) {
        return x(day.atStartOfDay(zone).toInstant());
    }

    private double x(Instant moment) {
        var start = reservoir.filling().at();
        var all = ChronoUnit.SECONDS.between(start, end.atStartOfDay(zone).toInstant());
        var part = (double) ChronoUnit.SECONDS.between(start, moment) / all;
        return LEFT + (right - LEFT) * Math.max(0, Math.min(1, part));
    }

    private double y(double volume) {
        return BOTTOM - (BOTTOM - TOP) * volume / reservoir.pump().reservoir().forPlot();
    }

    private static LocalDate latest(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
