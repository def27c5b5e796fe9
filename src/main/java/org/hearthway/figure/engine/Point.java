package org.hearthway.figure.engine;

/** A point of the page, 400 to a body height, y down. */
record Point(double x, double y) {

    Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    Point times(double by) {
        return new Point(x * by, y * by);
    }

    double length() {
        return StrictMath.hypot(x, y);
    }

    Point unit() {
        double length = length();
        return length < 1e-9 ? new Point(0, -1) : times(1 / length);
    }

    Point toward(Point other, double part) {
        return times(1 - part).plus(other.times(part));
    }
}
