package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws boxes, tubes, balls and rolls of the same space as the body. */
final class Solid {

    private static final double LINE = 2.2;

    private final View view;
    private final List<Shape> shapes;
    private final String name;
    private int layer;
    private int count;

    Solid(View view, List<Shape> shapes, String name, int layer) {
        this.view = view;
        this.shapes = shapes;
        this.name = name;
        this.layer = layer;
    }

    Solid on(int layer) {
        this.layer = layer;
        return this;
    }

    private void add(Path path, String fill, String stroke, double width) {
        shapes.add(new Shape(name + count++, path, fill, stroke, width, Optional.empty(), layer, false));
    }

    /** The faces of a box that look toward the viewer, in three tones. */
    void box(String material, String line, Vec low, Vec high) {
        var eye = view.viewer();
        double x = eye.x() >= 0 ? high.x() : low.x();
        double z = eye.z() >= 0 ? high.z() : low.z();
        if (Math.abs(eye.x()) > 1e-6) {
            face(
                    material + "-c",
                    line,
                    List.of(
                            new Vec(x, low.y(), low.z()),
                            new Vec(x, high.y(), low.z()),
                            new Vec(x, high.y(), high.z()),
                            new Vec(x, low.y(), high.z())));
        }
        if (Math.abs(eye.z()) > 1e-6) {
            face(
                    material + "-b",
                    line,
                    List.of(
                            new Vec(low.x(), low.y(), z),
                            new Vec(high.x(), low.y(), z),
                            new Vec(high.x(), high.y(), z),
                            new Vec(low.x(), high.y(), z)));
        }
        face(
                material + "-a",
                line,
                List.of(
                        new Vec(low.x(), high.y(), low.z()),
                        new Vec(high.x(), high.y(), low.z()),
                        new Vec(high.x(), high.y(), high.z()),
                        new Vec(low.x(), high.y(), high.z())));
    }

    private void face(String fill, String line, List<Vec> corners) {
        add(Path.polygon(corners.stream().map(view::page).toList()), "f-" + fill, "s-" + line, LINE);
    }

    /** One line drawn twice: its edge, then its body. */
    void tube(String fill, String line, double width, Vec... through) {
        var points = new ArrayList<Point>();
        for (var place : through) {
            points.add(view.page(place));
        }
        var path = Path.polyline(points);
        add(path, "", "s-" + line, width + 2.4);
        add(path, "", "s-" + fill, width);
    }

    void ball(String material, Vec middle, double radius) {
        add(Path.hull(List.of(view.page(Lump.ball(middle, radius)))), "f-" + material + "-b", "s-toy", LINE);
        var light = view.page(middle).plus(new Point(-radius * 120, -radius * 140));
        add(Path.disc(light, radius * 110), "f-" + material + "-a", "", 0);
    }

    /** A roll or wheel rim across the page: its two ends and what is between. */
    void roll(String material, String line, Vec middle, double radius, double half) {
        var far = disc(middle.plus(new Vec(0, 0, -half)), radius);
        var near = disc(middle.plus(new Vec(0, 0, half)), radius);
        add(Path.hull(List.of(view.page(far), view.page(near))), "f-" + material + "-c", "s-" + line, LINE);
        add(Path.hull(List.of(view.page(near))), "f-" + material + "-a", "s-" + line, LINE);
    }

    /** A soft pillow that lies flat: so thick, twice as long along the page, three times as deep. */
    void pillow(String material, String line, Vec middle, double thickness) {
        double r = thickness * .32;
        var corners = new ArrayList<Blob>();
        for (int x = -1; x <= 1; x += 2) {
            for (int y = -1; y <= 1; y += 2) {
                for (int z = -1; z <= 1; z += 2) {
                    var corner = new Vec(x * (thickness - r), y * (thickness / 2 - r), z * (thickness * 1.5 - r));
                    corners.add(view.page(Lump.ball(middle.plus(corner), r)));
                }
            }
        }
        add(Path.hull(corners), "f-" + material + "-b", "s-" + line, LINE);
    }

    /** A towel rolled up tight, six times as long as it is thick, with its end toward the viewer. */
    void rolled(String material, String line, Vec middle, double radius, Vec along) {
        boolean toward = along.dot(view.viewer()) > 0;
        var near = Lump.ball(middle.plus(along.times(toward ? radius * 6 : -radius * 6)), radius);
        var far = Lump.ball(middle.plus(along.times(toward ? -radius * 6 : radius * 6)), radius);
        add(Path.hull(List.of(view.page(far), view.page(near))), "f-" + material + "-b", "s-" + line, LINE);
        add(Path.hull(List.of(view.page(near))), "f-" + material + "-a", "s-" + line, LINE);
    }

    private static Lump disc(Vec middle, double radius) {
        return new Lump(middle, Frame.UPRIGHT, radius, radius, 1e-4);
    }

    /** A wheel: a tyre without a face. */
    void wheel(Vec middle, double radius, double width) {
        var ring = Path.hull(List.of(view.page(disc(middle, radius))));
        add(ring, "", "s-thing", width + 2.4);
        add(ring, "", "s-metal", width);
        add(Path.disc(view.page(middle), 5), "f-metal-c", "s-thing", 1.6);
    }

    /** A flat oval on the ground. */
    void shade(Point middle, double right, double down) {
        add(Path.hull(List.of(new Blob(middle, right * right, 0, down * down))), "f-floor", "", 0);
    }
}
