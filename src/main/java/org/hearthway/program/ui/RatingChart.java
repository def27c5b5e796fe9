package org.hearthway.program.ui;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.program.engine.trend.RunChart;

/**
 * A row of ratings over the days, with its median: stones above the median are filled, those below it hollow, those on it
 * small, so that runs on one side and crossings can be counted by eye and without colour.
 */
final class RatingChart {

    private static final double WIDTH = 720;
    private static final double HEIGHT = 214;
    private static final double LEFT = 40;
    private static final double RIGHT = 634;
    private static final double TOP = 14;
    private static final double BOTTOM = 182;
    private static final int MOST = 10;
    private static final int ROOMY = 12;
    private static final int EVERY = 4;

    private final HowSay say;
    private final RunChart chart;
    private final LocalDate from;
    private final LocalDate until;
    private final SvgText picture;

    /**
     * Makes it.
     *
     * @param from first day of the axis
     * @param until last day of the axis
     */
    RatingChart(HowSay say, RunChart chart, LocalDate from, LocalDate until, String label) {
        this.say = say;
        this.chart = chart;
        this.from = from;
        this.until = until;
        this.picture = new SvgText("u-block", 0, 0, WIDTH, HEIGHT).named(label);
    }

    Drawing draw() {
        axis();
        var median = chart.median().doubleValue();
        picture.shape("path", "class", "ch-lim", "d", "M" + n(LEFT) + " " + n(y(median)) + "H" + n(RIGHT));
        picture.text(RIGHT + 6, y(median) + 4, "ch-tb", "start", say.say("median", chart.median()));
        var way = new StringBuilder();
        chart.points()
                .forEach(point -> way.append(way.isEmpty() ? "M" : "L")
                        .append(n(x(point.day())))
                        .append(' ')
                        .append(n(y(point.number()))));
        picture.shape("path", "class", "hg-way", "d", way.toString());
        for (int i = 0; i < chart.points().size(); i++) {
            stone(chart.points().get(i), i);
        }
        return new Drawing(picture);
    }

    private void axis() {
        for (var level : List.of(0, MOST / 2, MOST)) {
            picture.shape("path", "class", "ch-ax", "d", "M" + n(LEFT) + " " + n(y(level)) + "H" + n(RIGHT));
            picture.text(LEFT - 6, y(level) + 4, "ch-t", "end", String.valueOf(level));
        }
        var monday = from.with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY));
        var weeks = ChronoUnit.WEEKS.between(from, until) + 1;
        for (int week = 0; !monday.plusWeeks(week).isAfter(until); week++) {
            var day = monday.plusWeeks(week);
            picture.shape("path", "class", "ch-ax", "d", "M" + n(x(day)) + " " + n(BOTTOM) + "v5");
            if (weeks <= ROOMY || week % EVERY == 0) {
                picture.text(x(day), BOTTOM + 20, "ch-t", "middle", say.shortDay(day));
            }
        }
    }

    private void stone(RunChart.Point point, int seed) {
        var side = Double.compare(point.number(), chart.median().doubleValue());
        var radius = side == 0 ? 2.6 : 4.8;
        picture.shape(
                "path",
                "class",
                side > 0 ? "hg-over" : side < 0 ? "hg-under" : "hg-on",
                "d",
                Stone.outline(x(point.day()), y(point.number()), radius, radius * 0.92, seed));
    }

    private double x(LocalDate day) {
        var all = Math.max(1, ChronoUnit.DAYS.between(from, until));
        return LEFT + 8 + (RIGHT - LEFT - 16) * ChronoUnit.DAYS.between(from, day) / all;
    }

    private double y(double number) {
        return BOTTOM - (BOTTOM - TOP) * number / MOST;
    }

    private static String n(double coordinate) {
        return SvgText.number(coordinate);
    }
}
