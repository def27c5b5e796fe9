package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramLine.Side;

/**
 * A dose to be counted instead of read: a mark for each time, a row for each round; a clock for each minute, filled as
 * far as the minute goes; a sun for each time of the day; a row of its own for each side.
 */
final class DosePicture {

    /** The fill of a mark that is counted and not timed. */
    static final double COUNTED = 0;

    private static final int MINUTE = 60;
    private static final int IN_A_ROW = 10;
    private static final int MANY_IN_A_ROW = 20;
    private static final double WIDTH = 360;
    private static final double BETWEEN_ROUNDS = 8;

    private DosePicture() {}

    /**
     * The marks of one side at one time of the day, round by round: {@link #COUNTED}, or the part of a minute, above 0
     * and at most 1. A hold longer than a minute has a row of its own.
     */
    static List<List<Double>> rows(Dose dose) {
        if (dose.minutes() > 0) {
            return Collections.nCopies(dose.sets(), Collections.nCopies(dose.minutes(), 1.0));
        }
        if (dose.holdSeconds() > MINUTE) {
            return Collections.nCopies(dose.sets() * dose.repetitions(), hold(dose.holdSeconds()));
        }
        var mark = dose.holdSeconds() == 0 ? COUNTED : (double) dose.holdSeconds() / MINUTE;
        return Collections.nCopies(dose.sets(), Collections.nCopies(dose.repetitions(), mark));
    }

    private static List<Double> hold(int seconds) {
        var marks = new ArrayList<>(Collections.nCopies(seconds / MINUTE, 1.0));
        if (seconds % MINUTE > 0) {
            marks.add((double) (seconds % MINUTE) / MINUTE);
        }
        return marks;
    }

    /** The dose of an exercise, named in words for those who hear the page. */
    static Component of(Reader reader, Planned planned) {
        var dose = planned.line().dose();
        var all = new Div();
        all.addClassName("hw-marks");
        all.getElement()
                .setAttribute("role", "img")
                .setAttribute("aria-label", DoseWords.amount(reader, planned.line()));
        if (dose.timesADay() > 1) {
            all.add(new Drawing(suns(dose.timesADay())));
        }
        switch (planned.line().side()) {
            case NONE, LEFT, RIGHT -> all.add(new Drawing(marks(rows(dose))));
            case EACH -> List.of(Side.RIGHT, Side.LEFT).forEach(side -> all.add(ofSide(reader, planned, side)));
        }
        return all;
    }

    /** The figure shows which side: it is drawn with the right, for the left it is seen in a mirror. */
    private static Component ofSide(Reader reader, Planned planned, Side side) {
        return Tags.div(
                "side",
                Tags.div("hw-well", Pictures.end(reader, planned.exercise(), side == Side.LEFT)),
                new Drawing(marks(rows(planned.line().dose()))));
    }

    static SvgText suns(int times) {
        var picture = new SvgText("hw-suns", 0, 0, times * 40.0, 36).decorative();
        IntStream.range(0, times).forEach(i -> {
            var x = 20 + 40 * i;
            picture.shape("path", "class", "mk-sun", "d", Stone.outline(x, 18, 8, 8, i + 80))
                    .shape("path", "class", "mk-ray", "d", rays(x, 18));
        });
        return picture;
    }

    private static String rays(double x, double y) {
        var path = new StringBuilder();
        for (int i = 0; i < 8; i++) {
            var angle = Math.PI * i / 4;
            path.append('M').append(point(x, y, 11.5, angle)).append('L').append(point(x, y, 15.5, angle));
        }
        return path.toString();
    }

    private static String point(double x, double y, double radius, double angle) {
        return SvgText.number(x + radius * Math.cos(angle)) + " " + SvgText.number(y + radius * Math.sin(angle));
    }

    static SvgText marks(List<List<Double>> rounds) {
        var longest = rounds.stream().mapToInt(List::size).max().orElse(1);
        var inARow = longest > MANY_IN_A_ROW ? MANY_IN_A_ROW : IN_A_ROW;
        var cell = WIDTH / along(inARow);
        var lines = rounds.stream()
                .mapToInt(round -> (round.size() + inARow - 1) / inARow)
                .sum();
        var height = lines * cell + (rounds.size() - 1) * BETWEEN_ROUNDS;
        var picture = new SvgText("hw-dots", 0, 0, WIDTH, height).decorative();
        double y = cell / 2;
        for (var round : rounds) {
            for (int i = 0; i < round.size(); i++) {
                var place = i % inARow;
                if (i > 0 && place == 0) {
                    y += cell;
                }
                mark(picture, cell * (along(place) + 0.5), y, cell, round.get(i), i);
            }
            y += cell + BETWEEN_ROUNDS;
        }
        return picture;
    }

    /** How far along a row a place lies, in cells: a wider gap after each five, so that the eye need not count to ten. */
    private static double along(int place) {
        int fives = place / 5;
        return place + 0.4 * fives;
    }

    private static void mark(SvgText picture, double x, double y, double cell, double part, int seed) {
        if (part == COUNTED) {
            picture.shape("path", "class", "mk dot", "d", Stone.outline(x, y, cell * 0.34, cell * 0.3, seed + 90));
            return;
        }
        var radius = cell * 0.38;
        picture.shape(
                "circle",
                "class",
                "mk clock",
                "cx",
                SvgText.number(x),
                "cy",
                SvgText.number(y),
                "r",
                SvgText.number(radius));
        if (part >= 1) {
            picture.shape(
                    "circle",
                    "class",
                    "mk-full",
                    "cx",
                    SvgText.number(x),
                    "cy",
                    SvgText.number(y),
                    "r",
                    SvgText.number(radius * 0.78));
        } else {
            picture.shape("path", "class", "mk-full", "d", sector(x, y, radius * 0.78, part));
        }
    }

    /** From twelve o'clock the way a clock goes. */
    private static String sector(double x, double y, double radius, double part) {
        var end = 2 * Math.PI * part - Math.PI / 2;
        return "M" + SvgText.number(x) + " " + SvgText.number(y) + "V" + SvgText.number(y - radius) + "A"
                + SvgText.number(radius) + " " + SvgText.number(radius) + " 0 " + (part > 0.5 ? "1" : "0") + " 1 "
                + point(x, y, radius, end) + "Z";
    }
}
