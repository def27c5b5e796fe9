package org.hearthway.parts;

import java.util.List;

/**
 * The level row of stones that stands for a day: behind us filled with a tick, now lit, ahead outlined; what could not
 * be is dashed with a bar. A note stands at its end.
 */
public final class DayWay {

    /** What a stone says. */
    public enum State {
        DONE,
        SOME,
        COULD_NOT,
        NOW,
        LATER
    }

    private static final double WIDTH = 358;
    private static final double HEIGHT = 74;
    private static final double MIDDLE = 37;
    private static final double ROOM = 250;

    private DayWay() {}

    /**
     * Draws the row.
     *
     * @param stones in order, at most one {@link State#NOW}
     * @param label the row in words
     * @param note the large note at its end, such as "14 min"
     * @param under the small note under it
     */
    public static Drawing of(List<State> stones, String label, String note, String under) {
        var picture = new SvgText("hw-dayway", 0, 0, WIDTH, HEIGHT).named(label);
        var gap = stones.size() < 2 ? 0 : Math.min(70, (ROOM - 60) / (stones.size() - 1));
        var small = Math.min(20, Math.max(9, gap * 0.34));
        var first = 24 + (stones.indexOf(State.NOW) == 0 ? 8 : 0);
        for (int i = 0; i + 1 < stones.size(); i++) {
            var behind = isBehind(stones.get(i));
            picture.shape(
                    "path",
                    "class",
                    behind ? "st-behind" : "st-track",
                    "d",
                    "M" + SvgText.number(first + i * gap) + " " + SvgText.number(MIDDLE) + "H"
                            + SvgText.number(first + (i + 1) * gap));
        }
        for (int i = 0; i < stones.size(); i++) {
            stone(picture, stones.get(i), first + i * gap, small, i);
        }
        picture.text(WIDTH, MIDDLE, "st-text st-note", "end", note);
        picture.text(WIDTH, MIDDLE + 20, "st-text sub", "end", under);
        return new Drawing(picture);
    }

    private static boolean isBehind(State state) {
        return switch (state) {
            case DONE, SOME, COULD_NOT -> true;
            case NOW, LATER -> false;
        };
    }

    private static void stone(SvgText picture, State state, double x, double small, int index) {
        var number = String.valueOf(index + 1);
        switch (state) {
            case DONE -> {
                picture.shape("path", "class", "st-done", "d", Stone.outline(x, MIDDLE, small, small * 0.82, index));
                picture.shape("path", "class", "st-done-mark", "d", tick(x, small));
            }
            case SOME -> {
                picture.shape("path", "class", "st-later", "d", Stone.outline(x, MIDDLE, small, small * 0.82, index));
                picture.shape(
                        "path",
                        "class",
                        "st-done",
                        "d",
                        "M" + SvgText.number(x - small * 0.92) + " " + SvgText.number(MIDDLE + 1) + "A"
                                + SvgText.number(small * 0.92) + " " + SvgText.number(small * 0.75) + " 0 0 0 "
                                + SvgText.number(x + small * 0.92) + " " + SvgText.number(MIDDLE + 1) + "Z");
            }
            case COULD_NOT -> {
                picture.shape("path", "class", "st-miss", "d", Stone.outline(x, MIDDLE, small, small * 0.82, index));
                picture.shape(
                        "path",
                        "class",
                        "st-miss-bar",
                        "d",
                        "M" + SvgText.number(x - small * 0.45) + " " + SvgText.number(MIDDLE) + "h"
                                + SvgText.number(small * 0.9));
            }
            case NOW -> {
                var outline = Stone.outline(x, MIDDLE, small * 1.45, small * 1.18, index);
                picture.shape(
                        "ellipse",
                        "class",
                        "st-glow",
                        "cx",
                        SvgText.number(x),
                        "cy",
                        SvgText.number(MIDDLE),
                        "rx",
                        SvgText.number(small * 2.3),
                        "ry",
                        SvgText.number(small * 1.9));
                picture.shape("path", "class", "st-now", "d", outline);
                picture.shape("path", "class", "st-now-edge", "d", outline);
                picture.text(x, MIDDLE + 5, "st-text on", "middle", number);
            }
            case LATER -> {
                picture.shape("path", "class", "st-later", "d", Stone.outline(x, MIDDLE, small, small * 0.82, index));
                if (small > 12) {
                    picture.text(x, MIDDLE + 5, "st-text sub", "middle", number);
                }
            }
        }
    }

    private static String tick(double x, double small) {
        var s = small / 20;
        return "M" + SvgText.number(x - 7 * s) + " " + SvgText.number(MIDDLE + 0.5 * s) + "l"
                + SvgText.number(5 * s) + " " + SvgText.number(5 * s) + " " + SvgText.number(9 * s) + " "
                + SvgText.number(-10.5 * s);
    }
}
