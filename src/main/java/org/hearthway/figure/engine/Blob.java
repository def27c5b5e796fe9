package org.hearthway.figure.engine;

/** An ellipsoid on the page: its middle and the matrix of its outline. */
record Blob(Point middle, double xx, double xy, double yy) {

    /** How far the outline reaches in a direction, from the page's origin. */
    double reach(double x, double y) {
        return middle.x() * x + middle.y() * y + radius(x, y);
    }

    private double radius(double x, double y) {
        return Math.sqrt(Math.max(1e-12, xx * x * x + 2 * xy * x * y + yy * y * y));
    }

    /** The outline's point that reaches farthest in a direction. */
    Point farthest(double x, double y) {
        double h = radius(x, y);
        return new Point(middle.x() + (xx * x + xy * y) / h, middle.y() + (xy * x + yy * y) / h);
    }
}
