package org.hearthway.stimulator.ui;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.engine.BatteryFit;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.stimulator.engine.Window;

/**
 * The battery over the time since the implant: a stone for each reading, hollow while nobody has confirmed it; the
 * likely fall as a dotted line and its steepest as a thin one; the window for a new generator behind them.
 */
final class BatteryChart {

    private static final double WIDTH = 720;
    private static final double HEIGHT = 232;
    private static final double LEFT = 58;
    private static final double RIGHT = 700;
    private static final double TOP = 34;
    private static final double BOTTOM = 188;
    private static final double LETTER = 6.2;

    /** What lies further ahead would press the readings together. */
    private static final int DAYS_AHEAD = 550;

    private static final int DAYS_ROUND = 30;
    private static final BigDecimal A_TENTH = new BigDecimal("0.1");

    private final StimulatorWords say;
    private final Generator generator;
    private final LocalDate today;
    private final Window window;
    private final List<Reading> shown;
    private final BatteryUnit unit;
    private final LocalDate end;
    private final double least;
    private final double most;
    private final SvgText picture;

    /**
     * Makes it.
     *
     * @param window that is drawn behind
     * @param readings of the generator that are shown, newest first
     */
    BatteryChart(StimulatorWords say, Generator generator, Window window, List<Reading> readings, LocalDate today) {
        this.say = say;
        this.generator = generator;
        this.today = today;
        this.window = window;
        this.unit = readings.stream()
                .filter(reading -> reading.data().level().isPresent())
                .findFirst()
                .map(reading -> reading.data().unit())
                .orElse(BatteryUnit.PERCENT);
        this.shown = readings.stream()
                .filter(reading ->
                        reading.data().level().isPresent() && reading.data().unit() == unit)
                .toList();
        this.end = end();
        this.least = unit == BatteryUnit.PERCENT ? 0 : volts(true);
        this.most = unit == BatteryUnit.PERCENT ? BatteryUnit.PERCENT.most().doubleValue() : volts(false);
        this.picture = new SvgText("u-block", 0, 0, WIDTH, HEIGHT).named(label());
    }

    private LocalDate end() {
        var limit = today.plusDays(DAYS_AHEAD);
        var last = today.plusDays(DAYS_ROUND);
        var opens = window.opens().map(Window.Candidate::day).orElse(last);
        var closes = window.closes().map(Window.Candidate::day).orElse(last);
        for (var day : List.of(opens.plusDays(DAYS_ROUND), closes.plusDays(DAYS_ROUND))) {
            last = day.isAfter(last) && !day.isAfter(limit) ? day : last;
        }
        return last;
    }

    /** A tenth of a volt below and above all that is shown. */
    private double volts(boolean low) {
        var levels = java.util.stream.Stream.concat(
                        shown.stream().flatMap(reading -> reading.data().level().stream()),
                        generator.about().endVolts().stream())
                .toList();
        return levels.stream()
                .reduce(low ? BigDecimal::min : BigDecimal::max)
                .map(level -> low ? level.subtract(A_TENTH) : level.add(A_TENTH))
                .orElse(low ? BatteryUnit.VOLT.least() : BatteryUnit.VOLT.most())
                .doubleValue();
    }

    private String label() {
        var last = shown.isEmpty()
                ? say.say("stimulator.chart.no-reading")
                : say.say(
                        "stimulator.chart.last",
                        say.level(shown.get(0).data()),
                        say.date(shown.get(0).data().day()));
        return window.opens()
                .map(first ->
                        say.say("stimulator.chart.label", say.date(generator.implanted()), last, say.date(first.day())))
                .orElseGet(() -> say.say("stimulator.chart.label.no-window", say.date(generator.implanted()), last));
    }

    Drawing draw() {
        window();
        axis();
        window.fit().flatMap(BatteryFit.Answer::fit).ifPresent(this::fall);
        var now = x(today);
        picture.shape(
                "path", "class", "sv-ink", "stroke-width", "1.5", "d", "M" + n(now) + " " + n(TOP) + "V" + n(BOTTOM));
        for (var place = shown.size() - 1; place >= 0; place--) {
            stone(shown.get(place), place);
        }
        text(LEFT, BOTTOM + 18, say.say("stimulator.chart.implant", say.date(generator.implanted())));
        text(now, BOTTOM + 36, say.say("stimulator.chart.today"));
        return new Drawing(picture);
    }

    private void window() {
        window.opens().filter(first -> first.day().isBefore(end)).ifPresent(first -> {
            var from = x(first.day());
            var until = window.closes().map(last -> x(last.day())).orElse(RIGHT);
            picture.shape(
                    "rect",
                    "class",
                    "ch-win",
                    "x",
                    n(from),
                    "y",
                    n(TOP),
                    "width",
                    n(Math.max(2, until - from)),
                    "height",
                    n(BOTTOM - TOP));
            text(from, TOP - 14, say.say("stimulator.chart.from", say.date(first.day())));
        });
    }

    private void axis() {
        var levels = unit == BatteryUnit.PERCENT ? List.of(0.0, 50.0, 100.0) : List.of(least, (least + most) / 2, most);
        for (var level : levels) {
            picture.shape("path", "class", "ch-ax", "d", "M" + n(LEFT) + " " + n(y(level)) + "H" + n(RIGHT));
            picture.text(
                    LEFT - 8,
                    y(level) + 4,
                    "ch-t",
                    "end",
                    say.level(BigDecimal.valueOf(level).setScale(unit.places(), java.math.RoundingMode.HALF_UP), unit));
        }
    }

    /** From the newest reading on: the likely fall and the steepest, down to the end. */
    private void fall(BatteryFit fit) {
        var from = fit.whole().last();
        line("ch-fc", fit, from, fit.likely());
        line("ch-ax2", fit, from, fit.earliest());
        picture.shape("path", "class", "ch-lim", "d", "M" + n(LEFT) + " " + n(y(fit.end())) + "H" + n(RIGHT));
    }

    private void line(String style, BatteryFit fit, LocalDate from, LocalDate until) {
        var days = Math.max(1, ChronoUnit.DAYS.between(from, until));
        var seen = Math.min(days, ChronoUnit.DAYS.between(from, end));
        var level = fit.from() - (fit.from() - fit.end()) * seen / days;
        picture.shape(
                "path",
                "class",
                style,
                "d",
                "M" + n(x(from)) + " " + n(y(fit.from())) + "L" + n(x(from.plusDays(seen))) + " " + n(y(level)));
    }

    private void stone(Reading reading, int seed) {
        var outline = Stone.outline(
                x(reading.data().day()), y(reading.data().level().orElseThrow().doubleValue()), 7, 6, seed);
        picture.shape("path", "class", reading.check().isPresent() ? "st-done" : "st-later", "d", outline);
        if (generator.about().charge() != Charge.AT_HOME && seed == 0) {
            text(
                    x(reading.data().day()),
                    y(reading.data().level().orElseThrow().doubleValue()) - 12,
                    say.level(reading.data()));
        }
    }

    private void text(double x, double y, String says) {
        var half = says.length() * LETTER / 2;
        picture.text(Math.max(half, Math.min(WIDTH - half, x)), y, "ch-tb", "middle", says);
    }

    private double x(LocalDate day) {
        var all = Math.max(1, ChronoUnit.DAYS.between(generator.implanted(), end));
        var part = Math.max(0, Math.min(all, ChronoUnit.DAYS.between(generator.implanted(), day)));
        return LEFT + (RIGHT - LEFT) * part / all;
    }

    private double y(double level) {
        return BOTTOM - (BOTTOM - TOP) * Math.max(0, Math.min(1, (level - least) / (most - least)));
    }

    private static String n(double coordinate) {
        return SvgText.number(coordinate);
    }
}
