package org.hearthway.pump.ui;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.pump.engine.RefillBy;

/**
 * From the fill to the alarm on one level line: how far we are, the day to refill by as a stone, the margin before the
 * alarm as a window, and the two limits as dashed lines.
 */
final class RefillLine {

    private static final double WIDTH = 720;
    private static final double HEIGHT = 132;
    private static final double LEFT = 26;
    private static final double LINE = 66;
    private static final double LETTER = 6.4;
    private static final int MOST_DAYS_SHOWN = 400;

    private final PumpWords words;

    RefillLine(PumpWords words) {
        this.words = words;
    }

    Drawing draw(RefillBy by, LocalDate today) {
        var limit = by.filled().plusDays(MOST_DAYS_SHOWN);
        var far = latest(by.byLife(), by.alarm(), today);
        var end = far.isAfter(limit) ? latest(by.byLife(), limit, today) : far;
        var picture = new SvgText("u-block", 0, 0, WIDTH, HEIGHT)
                .named(words.say(
                        "pump.line.label",
                        words.date(by.filled()),
                        words.date(today),
                        words.date(by.day()),
                        words.date(by.alarm())));
        var now = x(by, end, today);
        var day = x(by, end, by.day());
        if (!by.alarm().isAfter(end)) {
            var from = x(by, end, by.byAlarm());
            picture.shape(
                    "rect",
                    "class",
                    "ch-win",
                    "x",
                    n(from),
                    "y",
                    "40",
                    "width",
                    n(x(by, end, by.alarm()) - from),
                    "height",
                    "52");
            limit(picture, x(by, end, by.alarm()), "pump.line.alarm", 118);
        }
        limit(picture, x(by, end, by.byLife()), "pump.line.life", 30);
        picture.shape(
                "path", "class", "st-track", "d", "M" + n(Math.max(LEFT, now)) + " " + n(LINE) + "H" + n(WIDTH - LEFT));
        picture.shape("path", "class", "st-behind", "d", "M" + n(LEFT) + " " + n(LINE) + "H" + n(Math.max(LEFT, now)));
        picture.shape("path", "class", "st-done", "d", Stone.outline(LEFT, LINE, 11, 9, 4));
        picture.shape("path", "class", "sv-ink", "stroke-width", "1.5", "d", "M" + n(now) + " 40V92");
        var outline = Stone.outline(day, LINE, 15, 12, 9);
        // lit only when the day has come: the light marks the present
        if (by.day().isAfter(today)) {
            picture.shape("path", "class", "st-later", "d", outline);
        } else {
            picture.shape("path", "class", "st-now", "d", outline);
            picture.shape("path", "class", "st-now-edge", "d", outline);
        }
        text(picture, LEFT, 16, words.say("pump.line.filled", words.date(by.filled())));
        text(picture, now, 106, words.say("pump.line.today"));
        text(picture, day, 16, words.say("pump.line.by", words.date(by.day())));
        return new Drawing(picture);
    }

    private void limit(SvgText picture, double x, String key, double y) {
        picture.shape("path", "class", "ch-lim", "d", "M" + n(x) + " 36V96");
        text(picture, x, y, words.say(key));
    }

    private static void text(SvgText picture, double x, double y, String says) {
        var half = says.length() * LETTER / 2;
        picture.text(Math.max(half, Math.min(WIDTH - half, x)), y, "ch-tb", "middle", says);
    }

    private static double x(RefillBy by, LocalDate end, LocalDate day) {
        var all = Math.max(1, ChronoUnit.DAYS.between(by.filled(), end));
        var part = ChronoUnit.DAYS.between(by.filled(), day);
        return LEFT + (WIDTH - 2 * LEFT) * Math.max(0, Math.min(all, part)) / all;
    }

    private static LocalDate latest(LocalDate... days) {
        var latest = days[0];
        for (var day : days) {
            latest = day.isAfter(latest) ? day : latest;
        }
        return latest;
    }

    private static String n(double coordinate) {
        return SvgText.number(coordinate);
    }
}
