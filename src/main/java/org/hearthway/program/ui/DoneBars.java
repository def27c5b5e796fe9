package org.hearthway.program.ui;

import java.util.List;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.program.engine.Adherence;
import org.hearthway.program.engine.trend.Trends.Week;

/**
 * What was done week by week: a column for each, from what was done at its foot to what nobody reported at its top, each
 * part with a pattern of its own so that it can be told without colour; what was done besides stands over it.
 */
final class DoneBars {

    private static final double WIDTH = 720;
    private static final double HEIGHT = 236;
    private static final double LEFT = 40;
    private static final double RIGHT = 712;
    private static final double TOP = 40;
    private static final double BOTTOM = 196;
    private static final double WIDEST = 46;
    private static final double STRIPE = 4;

    /** More columns than these have no room for a date and a percent each. */
    private static final int ROOMY = 14;

    private static final int EVERY = 4;
    private static final int FEWEST_ON_AXIS = 4;

    /** The parts of a column from its foot up. */
    enum Part {
        DONE,
        SOME,
        EXCUSED,
        NOT_DONE,
        NOT_REPORTED;

        int of(Adherence adherence) {
            return switch (this) {
                case DONE -> adherence.done();
                case SOME -> adherence.some();
                case EXCUSED -> adherence.excused();
                case NOT_DONE -> adherence.notDone();
                case NOT_REPORTED -> adherence.notReported();
            };
        }
    }

    private final HowSay say;
    private final List<Week> weeks;
    private final int most;
    private final double step;
    private final SvgText picture;

    DoneBars(HowSay say, List<Week> weeks, String label) {
        this.say = say;
        this.weeks = weeks;
        this.most = weeks.stream()
                .mapToInt(week -> week.adherence().planned() + week.adherence().extra())
                .max()
                .orElse(0);
        this.step = (RIGHT - LEFT) / weeks.size();
        this.picture = new SvgText("u-block", 0, 0, WIDTH, HEIGHT).named(label);
    }

    Drawing draw() {
        var scale = Math.max(most, FEWEST_ON_AXIS);
        for (var level : List.of(0, scale / 2, scale)) {
            picture.shape("path", "class", "ch-ax", "d", "M" + n(LEFT) + " " + n(y(level)) + "H" + n(RIGHT));
            picture.text(LEFT - 6, y(level) + 4, "ch-t", "end", String.valueOf(level));
        }
        for (int i = 0; i < weeks.size(); i++) {
            column(i, weeks.get(i));
        }
        return new Drawing(picture);
    }

    private void column(int at, Week week) {
        var adherence = week.adherence();
        var width = Math.min(WIDEST, step * 0.68);
        var middle = LEFT + step * (at + 0.5);
        var level = 0;
        for (var part : Part.values()) {
            var count = part.of(adherence);
            if (count > 0) {
                block(picture, part, middle - width / 2, y(level + count), width, y(level) - y(level + count));
                level += count;
            }
        }
        if (adherence.extra() > 0) {
            extra(picture, middle, y(level) - 7);
            level += adherence.extra();
        }
        if (weeks.size() <= ROOMY || at % EVERY == 0) {
            picture.text(middle, BOTTOM + 18, "ch-t", "middle", say.shortDay(week.begins()));
        }
        if (weeks.size() <= ROOMY) {
            var percent = adherence.percent();
            picture.text(
                    middle,
                    y(level) - (adherence.extra() > 0 ? 14 : 7),
                    percent.isPresent() ? "ch-tb" : "ch-t",
                    "middle",
                    percent.isPresent() ? say.say("percent.short", Math.round(percent.getAsDouble())) : "–");
        }
    }

    /** One part of a column, or a sample of it. */
    static void block(SvgText picture, Part part, double x, double y, double width, double height) {
        picture.shape(
                "rect",
                "class",
                style(part),
                "x",
                n(x),
                "y",
                n(y),
                "width",
                n(width),
                "height",
                n(Math.max(1, height)));
        switch (part) {
            case SOME -> {
                for (var line = STRIPE / 2; line < height; line += STRIPE) {
                    picture.shape("path", "class", "hg-stripe", "d", "M" + n(x) + " " + n(y + line) + "h" + n(width));
                }
            }
            case EXCUSED -> {
                for (var line = STRIPE / 2; line < width; line += STRIPE) {
                    picture.shape("path", "class", "hg-post", "d", "M" + n(x + line) + " " + n(y) + "v" + n(height));
                }
            }
            case DONE, NOT_DONE, NOT_REPORTED -> {}
        }
    }

    private static String style(Part part) {
        return switch (part) {
            case DONE -> "hg-done";
            case SOME -> "hg-some";
            case EXCUSED -> "hg-excused";
            case NOT_DONE -> "hg-not";
            case NOT_REPORTED -> "hg-silent";
        };
    }

    /** A small diamond, for what was done besides. */
    static void extra(SvgText picture, double x, double y) {
        picture.shape("path", "class", "hg-extra", "d", "M" + n(x) + " " + n(y - 5) + "l5 5l-5 5l-5 -5Z");
    }

    private double y(int level) {
        return BOTTOM - (BOTTOM - TOP) * level / Math.max(most, FEWEST_ON_AXIS);
    }

    private static String n(double coordinate) {
        return SvgText.number(coordinate);
    }
}
