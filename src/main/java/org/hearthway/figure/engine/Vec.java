package org.hearthway.figure.engine;

/** A point or direction in space, in body heights: x to the right of the page, y up, z to the viewer. */
public record Vec(double x, double y, double z) {

    static final Vec ZERO = new Vec(0, 0, 0);

    Vec plus(Vec other) {
        return new Vec(x + other.x, y + other.y, z + other.z);
    }

    Vec minus(Vec other) {
        return new Vec(x - other.x, y - other.y, z - other.z);
    }

    Vec times(double by) {
        return new Vec(x * by, y * by, z * by);
    }

    double dot(Vec other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vec cross(Vec other) {
        return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    Vec unit() {
        return times(1 / length());
    }

    Vec toward(Vec other, double part) {
        return times(1 - part).plus(other.times(part));
    }
}
