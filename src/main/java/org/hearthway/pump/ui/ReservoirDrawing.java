package org.hearthway.pump.ui;

import static org.hearthway.parts.SvgText.number;

import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Volume;

/** A reservoir with what is expected in it, its scale and the line of its alarm. */
final class ReservoirDrawing {

    private static final double WIDTH = 248;
    private static final double HEIGHT = 236;
    private static final double LEFT = 14;
    private static final double RIGHT = 170;
    private static final double FULL = 62;
    private static final double BOTTOM = 218;
    private static final double CORNER = 34;
    private static final double TICK = 178;
    private static final double ALARM_LEFT = 6;
    private static final double MIDDLE = (LEFT + RIGHT) / 2;
    private static final int FEW = 25;

    private final PumpFigures figures;

    ReservoirDrawing(PumpFigures figures) {
        this.figures = figures;
    }

    Drawing draw(PumpModel pump, Volume expected) {
        var say = figures.words();
        var picture = new SvgText("u-block hw-reservoir", 0, 0, WIDTH, HEIGHT)
                .named(say.say(
                        "pump.state.reservoir.label",
                        figures.result(expected),
                        figures.result(pump.reservoir()),
                        figures.result(pump.alarm())));
        var all = pump.reservoir().forPlot();
        var level = y(all, Math.min(all, expected.forPlot()));
        if (expected.forPlot() > 0) {
            picture.shape("path", "class", "rs-fluid", "d", fluid(level));
        }
        scale(picture, all);
        alarm(picture, all, pump.alarm().forPlot());
        picture.shape("path", "class", "rs-wall", "d", wall());
        picture.shape(
                "path", "class", "rs-wall", "d", "M148 36C156 22 170 12 190 12H206M156 44C164 30 176 20 192 20H206");
        picture.shape("path", "class", "rs-port", "d", "M70 26Q92 42 114 26Q92 31 70 26Z");
        // words keep clear of the level's line
        var words = level < 140 ? Math.max(level + 44, 128) : Math.min(level - 40, 116);
        picture.text(MIDDLE, words, "ch-t rs-word", "middle", say.say("pump.state.reservoir.expected"));
        picture.text(MIDDLE, words + 24, "rs-num", "middle", figures.result(expected));
        return new Drawing(picture);
    }

    private static String wall() {
        return "M" + at(LEFT, FULL) + "C14 44 44 30 70 26Q92 42 114 26C140 30 170 44 " + at(RIGHT, FULL) + "V"
                + number(BOTTOM - CORNER) + "Q" + at(RIGHT, BOTTOM) + at(RIGHT - CORNER, BOTTOM) + "H"
                + number(LEFT + CORNER) + "Q" + at(LEFT, BOTTOM) + at(LEFT, BOTTOM - CORNER) + "Z";
    }

    /** The fluid up to its level. Below the straight walls the round corners are cut where the level meets them. */
    private static String fluid(double level) {
        var cut = 1 - Math.sqrt(Math.min(1, (BOTTOM - level) / CORNER));
        var in = CORNER * cut * cut;
        var side = Math.max(level, BOTTOM - CORNER);
        var wave = Math.min(2.5, (BOTTOM - level) / 3);
        return "M" + at(LEFT + in, level) + "Q" + at((LEFT + MIDDLE) / 2, level - wave) + at(MIDDLE, level) + "T"
                + at(RIGHT - in, level) + "V" + number(side) + "Q" + at(RIGHT - CORNER * cut, BOTTOM)
                + at(RIGHT - CORNER, BOTTOM) + "H" + number(LEFT + CORNER) + "Q" + at(LEFT + CORNER * cut, BOTTOM)
                + at(LEFT + in, side) + "Z";
    }

    private static String at(double x, double y) {
        return " " + number(x) + " " + number(y) + " ";
    }

    private void scale(SvgText picture, double all) {
        var step = all > FEW ? 10 : 5;
        for (var mark = 0; mark <= all; mark += step) {
            var y = y(all, mark);
            picture.shape("path", "class", "ch-ax2", "d", "M" + number(TICK) + " " + number(y) + "h8");
            picture.text(TICK + 14, y + 4, "ch-t", "start", Integer.toString(mark));
        }
        picture.text(TICK + 14, FULL - 16, "ch-t", "start", figures.words().say("pump.chart.unit"));
    }

    private void alarm(SvgText picture, double all, double alarm) {
        var y = y(all, alarm);
        picture.shape("path", "class", "ch-lim", "d", "M" + at(ALARM_LEFT, y) + "H" + number(TICK));
        picture.text(WIDTH - 2, y - 5, "ch-tb rs-alarm", "end", figures.words().say("pump.state.reservoir.alarm"));
    }

    private static double y(double all, double volume) {
        return BOTTOM - (BOTTOM - FULL) * volume / all;
    }
}
