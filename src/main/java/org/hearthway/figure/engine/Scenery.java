package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Everything of one picture at one time, from the back to the front. */
final class Scenery {

    /** A part that moved less is not dotted. */
    private static final double MOVED = .045 * View.SCALE;

    private static final Look HELPER = new Look(Look.Hair.SHORT, 1, java.util.Set.of(), false);

    private final FigureSheet sheet;
    private final Motion motion;
    private final Map<Double, Body> bodies = new LinkedHashMap<>();
    private final Map<Double, List<Shape>> drawn = new LinkedHashMap<>();
    private final double[] reach;

    Scenery(FigureSheet sheet, Motion motion) {
        this.sheet = sheet;
        this.motion = motion;
        this.reach = reach();
    }

    FigureSheet sheet() {
        return sheet;
    }

    Body body(double time) {
        return bodies.computeIfAbsent(time, t -> new Body(motion.at(t), motion.size()));
    }

    /** From where to where the figure reaches over all of its positions, so that the mat is one size. */
    private double[] reach() {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < motion.stops(); i++) {
            var body = body((double) i / Math.max(1, motion.stops() - 1));
            var places = new ArrayList<>(List.of(body.head, body.hip));
            for (var side : Side.values()) {
                places.addAll(List.of(
                        body.leg(side).toe(),
                        body.leg(side).heel(),
                        body.leg(side).knee(),
                        body.arm(side).tip(),
                        body.arm(side).elbow()));
            }
            for (var place : places) {
                if (place.y() < .25) {
                    left = Math.min(left, place.x());
                    right = Math.max(right, place.x());
                }
            }
        }
        return new double[] {left, right};
    }

    List<Shape> at(double time) {
        return drawn.computeIfAbsent(time, this::draw);
    }

    private List<Shape> draw(double time) {
        var view = sheet.view();
        var shapes = new ArrayList<Shape>();
        var body = body(time);
        var furniture = new Furniture(view, motion.size(), shapes, reach[0], reach[1]);
        sheet.supports().forEach(furniture::draw);
        sheet.helper().ifPresent(helper -> shapes.addAll(helper(helper, body)));
        var canvas = new Canvas(view, 1, "");
        new DrawnBody(canvas, body, sheet.look()).draw();
        shapes.addAll(canvas.shapes());
        int number = 0;
        for (var thing : sheet.things()) {
            DrawnThing.draw(thing, view, body, time, number++, shapes);
        }
        shapes.sort(Comparator.comparingInt(Shape::layer));
        return shapes;
    }

    private List<Shape> helper(HelperSheet helper, Body child) {
        var canvas = new Canvas(sheet.view(), HelperSheet.SCALE, "h-");
        var pose = helper.pose(motion.room(), child);
        new DrawnBody(canvas, new Body(pose, Proportions.at(20)), HELPER).drawHelper(helper.front());
        return canvas.shapes();
    }

    /** The dotted start, for what changes place and not only posture. */
    List<Shape> ghost() {
        return sheet.kind() == FigureSheet.Kind.POSTURE
                ? List.of()
                : outline().stream().toList();
    }

    List<Shape> arrows() {
        var shapes = new ArrayList<Shape>();
        int number = 0;
        for (var arrow : sheet.arrows()) {
            ArrowWay.draw(arrow, sheet.view(), this::body, number++, shapes);
        }
        return shapes;
    }

    /** The outline of every part of the start that went elsewhere. */
    private Optional<Shape> outline() {
        var ends = new LinkedHashMap<String, Shape>();
        at(1).stream().filter(Shape::body).forEach(shape -> ends.put(shape.key(), shape));
        return at(0).stream()
                .filter(Shape::body)
                .filter(shape -> shape.clip().isEmpty() && shape.width() == Shape.LINE)
                .filter(shape -> Optional.ofNullable(ends.get(shape.key()))
                        .map(then -> then.path()
                                        .middle()
                                        .minus(shape.path().middle())
                                        .length()
                                > MOVED)
                        .orElse(true))
                .map(Shape::path)
                .reduce(Path::with)
                .map(path -> new Shape("ghost", path, "f-ghost", "s-ghost", 3.2, Optional.empty(), Layer.GHOST, false));
    }
}
