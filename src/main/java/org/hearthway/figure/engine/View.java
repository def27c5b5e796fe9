package org.hearthway.figure.engine;

/**
 * From where a picture is seen, without perspective.
 *
 * @param yaw degrees about the upright, 0 from the side, 90 from in front of a child that looks to the right
 * @param pitch degrees from above
 */
public record View(double yaw, double pitch) {

    static final double SCALE = 400;

    private Vec right() {
        double a = Math.toRadians(yaw);
        return new Vec(StrictMath.cos(a), 0, -StrictMath.sin(a));
    }

    Vec viewer() {
        double a = Math.toRadians(yaw);
        double p = Math.toRadians(pitch);
        return new Vec(StrictMath.sin(a) * StrictMath.cos(p), StrictMath.sin(p), StrictMath.cos(a) * StrictMath.cos(p));
    }

    private Vec up() {
        return viewer().cross(right());
    }

    /** How near to the viewer, along the ground: a camera from above must not make what is low look deep. */
    double nearness(Vec place) {
        double a = Math.toRadians(yaw);
        return place.x() * StrictMath.sin(a) + place.z() * StrictMath.cos(a);
    }

    Point page(Vec place) {
        return new Point(place.dot(right()) * SCALE, -place.dot(up()) * SCALE);
    }

    Blob page(Lump lump) {
        var a = page(lump.axes().f().times(lump.depth()));
        var b = page(lump.axes().u().times(lump.height()));
        var c = page(lump.axes().r().times(lump.width()));
        return new Blob(
                page(lump.middle()),
                a.x() * a.x() + b.x() * b.x() + c.x() * c.x(),
                a.x() * a.y() + b.x() * b.y() + c.x() * c.y(),
                a.y() * a.y() + b.y() * b.y() + c.y() * c.y());
    }
}
