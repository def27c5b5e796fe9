package org.hearthway.figure.engine;

import java.util.Collection;
import java.util.Locale;

/** A rectangle of the page. */
record Box(double left, double top, double right, double bottom) {

    private static final Box NONE = new Box(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    static Box around(Collection<Shape> shapes) {
        var box = NONE;
        for (var shape : shapes) {
            double line = shape.stroke().isEmpty() ? 0 : shape.width() / 2;
            var path = shape.path();
            box = box.with(new Box(path.left() - line, path.top() - line, path.right() + line, path.bottom() + line));
        }
        return box;
    }

    Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    Box mirrored() {
        return new Box(-right, top, -left, bottom);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    String viewBox() {
        return String.format(Locale.ROOT, "%.0f %.0f %.0f %.0f", left, top, width(), height());
    }
}
