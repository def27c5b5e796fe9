package org.hearthway.parts;

import java.util.Random;

/** The outline of a stone, cut by hand: never twice the same, always the same for the same seed. */
public final class Stone {

    private static final int POINTS = 9;

    private Stone() {}

    /** A closed path around a centre with two radii. */
    public static String outline(double cx, double cy, double rx, double ry, int seed) {
        var random = new Random(31L * seed + 7);
        var x = new double[POINTS];
        var y = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            var angle = 2 * Math.PI * i / POINTS + (random.nextDouble() - 0.5) * 0.16;
            var swell = 0.95 + random.nextDouble() * 0.1;
            x[i] = cx + rx * swell * Math.cos(angle);
            y[i] = cy + ry * swell * Math.sin(angle);
        }
        var path = new StringBuilder("M" + SvgText.number(x[0]) + " " + SvgText.number(y[0]));
        for (int i = 0; i < POINTS; i++) {
            var before = Math.floorMod(i - 1, POINTS);
            var to = (i + 1) % POINTS;
            var after = (i + 2) % POINTS;
            // Catmull-Rom through the points, written as cubic curves
            path.append("C")
                    .append(pair(x[i] + (x[to] - x[before]) / 6, y[i] + (y[to] - y[before]) / 6))
                    .append(' ')
                    .append(pair(x[to] - (x[after] - x[i]) / 6, y[to] - (y[after] - y[i]) / 6))
                    .append(' ')
                    .append(pair(x[to], y[to]));
        }
        return path.append('Z').toString();
    }

    private static String pair(double x, double y) {
        return SvgText.number(x) + " " + SvgText.number(y);
    }
}
