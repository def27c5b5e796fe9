package org.hearthway.path.ui;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Finds a free row for each name along the line, so that none lies on another. */
final class Labels {

    /** About the width of a letter of the small bold face, in the picture's units. */
    private static final double LETTER = 6.3;

    private static final double AIR = 8;

    private final List<Double> rows;
    private final double width;
    private final Map<Double, Double> usedUntil = new HashMap<>();

    /** Rows in the order they are tried, by their height in the picture. */
    Labels(List<Double> rows, double width) {
        this.rows = List.copyOf(rows);
        this.width = width;
    }

    /** The middle of a name so that it stays in the picture. */
    double middle(double x, String name) {
        var half = name.length() * LETTER / 2;
        return Math.max(half, Math.min(width - half, x));
    }

    /** The row for a name; empty when none is free. Ask from left to right. */
    OptionalDouble row(double x, String name) {
        var half = name.length() * LETTER / 2;
        var middle = middle(x, name);
        for (var row : rows) {
            if (usedUntil.getOrDefault(row, 0.0) <= middle - half) {
                usedUntil.put(row, middle + half + AIR);
                return OptionalDouble.of(row);
            }
        }
        return OptionalDouble.empty();
    }
}
