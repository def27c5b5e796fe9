package org.hearthway.figure.engine;

/**
 * Which way a part of the body points: three unit vectors, forward, up and right, right-handed (forward x up = right).
 * A limb runs along minus up. Turns in degrees, applied in the part's own axes.
 */
record Frame(Vec f, Vec u, Vec r) {

    /** Upright, facing the right of the page: the right side is near. */
    static final Frame UPRIGHT = new Frame(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1));

    /** Bends forward when positive. */
    Frame sag(double degrees) {
        double c = StrictMath.cos(Math.toRadians(degrees));
        double s = StrictMath.sin(Math.toRadians(degrees));
        return new Frame(mix(f, c, u, -s), mix(u, c, f, s), r);
    }

    /** Swings the far end of a limb to the right when positive. */
    Frame abd(double degrees) {
        double c = StrictMath.cos(Math.toRadians(degrees));
        double s = StrictMath.sin(Math.toRadians(degrees));
        return new Frame(f, mix(u, c, r, -s), mix(r, c, u, s));
    }

    /** Turns forward toward right about the long axis when positive. */
    Frame rot(double degrees) {
        double c = StrictMath.cos(Math.toRadians(degrees));
        double s = StrictMath.sin(Math.toRadians(degrees));
        return new Frame(mix(f, c, r, s), u, mix(r, c, f, -s));
    }

    private static Vec mix(Vec a, double p, Vec b, double q) {
        return a.times(p).plus(b.times(q));
    }

    /** The point so far forward, up and right of a point. */
    Vec from(Vec origin, double forward, double up, double right) {
        return origin.plus(f.times(forward)).plus(u.times(up)).plus(r.times(right));
    }

    /** The frame part of the way to another, turning about the one axis that joins them. */
    Frame toward(Frame other, double part) {
        double cos = (f.dot(other.f) + u.dot(other.u) + r.dot(other.r) - 1) / 2;
        double angle = StrictMath.acos(Math.max(-1, Math.min(1, cos)));
        if (angle < 1e-9) {
            return this;
        }
        var sum = f.cross(other.f).plus(u.cross(other.u)).plus(r.cross(other.r));
        var axis = sum.length() < 1e-9 ? u : sum.unit();
        return new Frame(turned(f, axis, angle * part), turned(u, axis, angle * part), turned(r, axis, angle * part));
    }

    private static Vec turned(Vec v, Vec axis, double angle) {
        double c = StrictMath.cos(angle);
        return v.times(c).plus(axis.cross(v).times(StrictMath.sin(angle))).plus(axis.times(axis.dot(v) * (1 - c)));
    }
}
