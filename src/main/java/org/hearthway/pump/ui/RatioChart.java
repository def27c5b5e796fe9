package org.hearthway.pump.ui;

import static org.hearthway.parts.SvgText.number;

import java.math.BigDecimal;
import java.util.List;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.pump.PumpOutlook.Found;
import org.hearthway.pump.engine.Amount;
import org.hearthway.pump.engine.ResidualRules;
import org.hearthway.pump.engine.Unit;

/** Delivered against planned, refill by refill, with the clinic's limits; the table under it says the same. */
final class RatioChart {

    private static final double WIDTH = 420;
    private static final double HEIGHT = 190;
    private static final double LEFT = 44;
    private static final double RIGHT = 400;
    private static final double TOP = 26;
    private static final double BOTTOM = 150;
    private static final double LEAST_SPAN = 0.25;
    private static final double PERCENT = 100;
    private static final int MOST_NAMED = 6;

    private final PumpFigures figures;
    private final List<Found> refills;
    private final double limit;
    private final double span;

    /**
     * Plots them.
     *
     * @param refills the first first
     */
    RatioChart(PumpFigures figures, List<Found> refills, ResidualRules rules) {
        this.figures = figures;
        this.refills = refills;
        this.limit = rules.basis() == ResidualRules.Basis.PLANNED_DELIVERY ? rules.percent() / PERCENT : 0;
        this.span = refills.stream()
                        .mapToDouble(found -> Math.abs(ratio(found) - 1))
                        .reduce(Math.max(LEAST_SPAN, limit * 1.3), Math::max)
                * 1.1;
    }

    private static double ratio(Found found) {
        return found.residual().ratio().map(Amount::forPlot).orElse(1.0);
    }

    Drawing draw() {
        var say = figures.words();
        var picture =
                new SvgText("u-block", 0, 0, WIDTH, HEIGHT).named(say.say("pump.chart.ratio.label", refills.size()));
        line(picture, "ch-ax2", 1, say.say("pump.chart.ratio.one"));
        if (limit > 0) {
            line(picture, "ch-lim", 1 + limit, figures.bare(hundredths(1 + limit)));
            line(picture, "ch-lim", 1 - limit, figures.bare(hundredths(1 - limit)));
        }
        var path = new StringBuilder();
        for (var i = 0; i < refills.size(); i++) {
            if (refills.get(i).residual().ratio().isPresent()) {
                path.append(path.isEmpty() ? "M" : "L")
                        .append(number(x(i)))
                        .append(' ')
                        .append(number(y(refills.get(i))));
            }
        }
        picture.shape("path", "class", "ch-line", "d", path.isEmpty() ? "M0 0" : path.toString());
        for (var i = 0; i < refills.size(); i++) {
            point(picture, i, refills.get(i));
        }
        return new Drawing(picture);
    }

    private static Amount hundredths(double ratio) {
        return Amount.of(BigDecimal.valueOf(Math.round(ratio * PERCENT), 2), Unit.ONE);
    }

    private void line(SvgText picture, String look, double ratio, String name) {
        var y = y(ratio);
        picture.shape("path", "class", look, "d", "M" + number(LEFT) + " " + number(y) + "H" + number(RIGHT + 12));
        picture.text(LEFT - 8, y + 4, "ch-t", "end", name);
    }

    /** A flagged one is a ring with a cross, so that it is told apart in grey. */
    private void point(SvgText picture, int at, Found found) {
        if (found.residual().ratio().isEmpty()) {
            return;
        }
        var x = x(at);
        var y = y(found);
        var flagged = found.residual().flagged();
        picture.shape(
                "circle",
                "class",
                flagged ? "ch-ring" : "ch-dot",
                "cx",
                number(x),
                "cy",
                number(y),
                "r",
                flagged ? "7" : "4.5");
        if (flagged) {
            picture.shape(
                    "path",
                    "class",
                    "sv-ink",
                    "stroke-width",
                    "1.75",
                    "d",
                    "M" + number(x - 3) + " " + number(y - 3) + "l6 6m0 -6l-6 6");
        }
        if (at >= refills.size() - MOST_NAMED) {
            picture.text(x, BOTTOM + 24, "ch-t", "middle", figures.words().shortDate(found.day()));
        }
    }

    private double x(int at) {
        return LEFT + (RIGHT - LEFT) * (at + 0.5) / refills.size();
    }

    private double y(Found found) {
        return y(ratio(found));
    }

    private double y(double ratio) {
        var middle = (TOP + BOTTOM) / 2;
        return middle - (ratio - 1) / span * (BOTTOM - TOP) / 2;
    }
}
