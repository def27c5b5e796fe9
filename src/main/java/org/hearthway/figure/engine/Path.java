package org.hearthway.figure.engine;

import java.util.List;

/**
 * Path data of SVG, in tenths of a unit, with where it lies. Pictures of one drawing have the same commands in every
 * pose, so that one can go over into the other.
 */
record Path(String data, double left, double top, double right, double bottom) {

    private static final int FEW = 12;
    private static final int MANY = 24;

    Point middle() {
        return new Point((left + right) / 2, (top + bottom) / 2);
    }

    Path with(Path other) {
        return new Path(
                data + other.data,
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    /** The convex hull, smooth: 24 directions are enough at any size. */
    static Path hull(List<Blob> blobs) {
        return hull(blobs, MANY);
    }

    /** The hull of something small. */
    static Path small(List<Blob> blobs) {
        return hull(blobs, FEW);
    }

    private static Path hull(List<Blob> blobs, int directions) {
        var pen = new Pen();
        double turn = 2 * Math.PI / directions;
        var supports = new Point[directions];
        var reaches = new double[directions];
        for (int i = 0; i < directions; i++) {
            double x = StrictMath.cos((i + .5) * turn);
            double y = StrictMath.sin((i + .5) * turn);
            reaches[i] = Double.NEGATIVE_INFINITY;
            for (var blob : blobs) {
                if (blob.reach(x, y) > reaches[i]) {
                    reaches[i] = blob.reach(x, y);
                    supports[i] = blob.farthest(x, y);
                }
            }
        }
        pen.move(supports[0]);
        for (int i = 0; i < directions; i++) {
            int next = (i + 1) % directions;
            pen.curve(meeting(i, reaches[i], reaches[next], turn), supports[next]);
        }
        return new Path(
                pen.close().data,
                -farthest(blobs, -1, 0),
                -farthest(blobs, 0, -1),
                farthest(blobs, 1, 0),
                farthest(blobs, 0, 1));
    }

    private static double farthest(List<Blob> blobs, double x, double y) {
        return blobs.stream().mapToDouble(blob -> blob.reach(x, y)).max().orElseThrow();
    }

    /** Where the lines of support of two neighbouring directions meet. */
    private static Point meeting(int i, double reach, double next, double turn) {
        double a = (i + .5) * turn;
        double b = a + turn;
        double det = StrictMath.sin(turn);
        return new Point(
                (reach * StrictMath.sin(b) - next * StrictMath.sin(a)) / det,
                (next * StrictMath.cos(a) - reach * StrictMath.cos(b)) / det);
    }

    static Path polygon(List<Point> points) {
        var pen = line(points);
        return pen.close();
    }

    static Path polyline(List<Point> points) {
        return line(points).open();
    }

    private static Pen line(List<Point> points) {
        var pen = new Pen();
        pen.move(points.get(0));
        points.subList(1, points.size()).forEach(pen::line);
        return pen;
    }

    /** A smooth line through points. */
    static Path smooth(List<Point> points) {
        var pen = new Pen();
        pen.move(points.get(0));
        for (int i = 1; i < points.size() - 1; i++) {
            pen.curve(
                    points.get(i),
                    i == points.size() - 2 ? points.get(i + 1) : points.get(i).toward(points.get(i + 1), .5));
        }
        return pen.open();
    }

    static Path disc(Point middle, double radius) {
        return small(List.of(new Blob(middle, radius * radius, 0, radius * radius)));
    }
}
