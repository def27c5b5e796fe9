package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A cap of an ellipsoid cut by a plane, as it is seen: the part of the cut that faces the viewer, and the part of the
 * silhouette on the cap's side. Always the same number of points.
 */
final class Hair {

    private static final int HALF = 18;

    private Hair() {}

    /**
     * The cap's outline, or empty when nothing of it is seen.
     *
     * @param normal of the plane in the ellipsoid's own axes, its unit sphere as measure
     * @param cut how far from the middle, 0 to 1
     */
    static Optional<List<Vec>> cap(Lump lump, Vec normal, double cut, Vec viewer) {
        var axes = lump.axes();
        var seen = new Vec(
                        viewer.dot(axes.f()) / lump.depth(),
                        viewer.dot(axes.u()) / lump.height(),
                        viewer.dot(axes.r()) / lump.width())
                .unit();
        var n = normal.unit();
        double along = n.dot(seen);
        double across = Math.sqrt(Math.max(1e-12, 1 - along * along));
        double rim = Math.sqrt(1 - cut * cut);
        double rimCos = -cut * along / (rim * across);
        double edgeCos = cut / across;
        if (rimCos >= 1) {
            return Optional.empty();
        }
        var toViewer = seen.minus(n.times(along)).unit();
        var aside = n.cross(toViewer);
        double rimEnd = rimCos <= -1 ? Math.PI : StrictMath.acos(rimCos);
        var points = new ArrayList<Vec>();
        int count = rimCos <= -1 ? 2 * HALF : HALF;
        for (int i = 0; i < count; i++) {
            double a = -rimEnd + 2 * rimEnd * i / (rimCos <= -1 ? count : count - 1);
            points.add(n.times(cut)
                    .plus(toViewer.times(rim * StrictMath.cos(a)))
                    .plus(aside.times(rim * StrictMath.sin(a))));
        }
        if (rimCos > -1) {
            edge(points, n, seen, along, StrictMath.acos(Math.max(-1, Math.min(1, edgeCos))));
        }
        return Optional.of(points.stream().map(p -> onto(lump, p)).toList());
    }

    private static void edge(List<Vec> points, Vec n, Vec seen, double along, double end) {
        var top = n.minus(seen.times(along)).unit();
        var aside = seen.cross(top);
        var last = points.get(points.size() - 1);
        double sign = top.times(StrictMath.cos(end))
                                .plus(aside.times(StrictMath.sin(end)))
                                .minus(last)
                                .length()
                        < top.times(StrictMath.cos(end))
                                .minus(aside.times(StrictMath.sin(end)))
                                .minus(last)
                                .length()
                ? 1
                : -1;
        for (int i = 0; i < HALF; i++) {
            double a = sign * (end - 2 * end * i / (HALF - 1));
            points.add(top.times(StrictMath.cos(a)).plus(aside.times(StrictMath.sin(a))));
        }
    }

    private static Vec onto(Lump lump, Vec p) {
        return lump.axes().from(lump.middle(), p.x() * lump.depth(), p.y() * lump.height(), p.z() * lump.width());
    }
}
