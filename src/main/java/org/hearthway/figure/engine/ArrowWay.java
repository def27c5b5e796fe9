package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** The arrow beside the way of a point, trimmed, never too short to be seen. */
final class ArrowWay {

    private static final int STEPS = 9;
    private static final double SHORTEST = .09 * View.SCALE;

    private ArrowWay() {}

    static void draw(FigureSheet.Arrow arrow, View view, DoubleFunction<Body> at, int number, List<Shape> shapes) {
        var way = new ArrayList<Point>();
        for (int i = 0; i < STEPS; i++) {
            var body = at.apply((double) i / (STEPS - 1));
            var point = view.page(body.point(arrow.of()).orElseThrow());
            way.add(aside(arrow, view, body, point));
        }
        var line = trimmed(lengthened(way));
        var tip = line.get(line.size() - 1);
        var along = tip.minus(line.get(line.size() - 3)).unit();
        var across = new Point(-along.y(), along.x());
        var base = tip.minus(along.times(4));
        var head = Path.polygon(
                List.of(tip.plus(along.times(20)), base.plus(across.times(10.5)), base.minus(across.times(10.5))));
        var path = Path.smooth(line);
        add(shapes, number + "halo", path, "", "s-halo", 10);
        add(shapes, number + "tip-halo", head, "f-halo", "s-halo", 8);
        add(shapes, number + "line", path, "", "s-arrow", 4.8);
        add(shapes, number + "tip", head, "f-arrow", "s-arrow", 3);
    }

    private static void add(List<Shape> shapes, String name, Path path, String fill, String stroke, double width) {
        shapes.add(
                new Shape("arrow" + name, path, fill, stroke, width, Optional.empty(), Layer.HELPING_HAND + 1, false));
    }

    private static Point aside(FigureSheet.Arrow arrow, View view, Body body, Point point) {
        if (arrow.shift().isPresent()) {
            var shift = arrow.shift().get();
            return point.plus(new Point(shift.x() * View.SCALE, -shift.y() * View.SCALE));
        }
        var pivot = arrow.pivot().flatMap(body::point).map(view::page);
        if (pivot.isEmpty()) {
            return point;
        }
        var away = point.minus(pivot.get()).unit().times(arrow.off() * View.SCALE);
        return arrow.flip() ? point.minus(away) : point.plus(away);
    }

    private static double length(List<Point> way) {
        double sum = 0;
        for (int i = 1; i < way.size(); i++) {
            sum += way.get(i).minus(way.get(i - 1)).length();
        }
        return sum;
    }

    /** A small movement gets an arrow that is longer than it. */
    private static List<Point> lengthened(List<Point> way) {
        double length = length(way);
        if (length >= SHORTEST) {
            return way;
        }
        var middle = way.get(way.size() / 2);
        var chord = way.get(way.size() - 1).minus(way.get(0)).unit();
        var longer = new ArrayList<Point>();
        for (int i = 0; i < way.size(); i++) {
            longer.add(middle.plus(chord.times(SHORTEST * (i / (way.size() - 1.0) - .5))));
        }
        return longer;
    }

    /** Evenly spaced by length, without the outermost tenth at either end. */
    private static List<Point> trimmed(List<Point> way) {
        double length = length(way);
        var line = new ArrayList<Point>();
        int count = 10;
        for (int i = 0; i < count; i++) {
            line.add(along(way, length * (.06 + .84 * i / (count - 1))));
        }
        return line;
    }

    private static Point along(List<Point> way, double distance) {
        double left = distance;
        for (int i = 1; i < way.size(); i++) {
            double step = way.get(i).minus(way.get(i - 1)).length();
            if (left <= step && step > 0) {
                return way.get(i - 1).toward(way.get(i), left / step);
            }
            left -= step;
        }
        return way.get(way.size() - 1);
    }
}
