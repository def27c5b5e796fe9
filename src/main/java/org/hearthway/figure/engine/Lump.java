package org.hearthway.figure.engine;

/** An ellipsoid of the body: its middle, its axes, and half of its depth, height and width along them. */
record Lump(Vec middle, Frame axes, double depth, double height, double width) {

    static Lump ball(Vec middle, double radius) {
        return new Lump(middle, Frame.UPRIGHT, radius, radius, radius);
    }

    /** How far it reaches in a direction from its middle. */
    double reach(Vec way) {
        double a = depth * axes.f().dot(way);
        double b = height * axes.u().dot(way);
        double c = width * axes.r().dot(way);
        return Math.sqrt(a * a + b * b + c * c);
    }

    double lowest() {
        return middle.y() - reach(Frame.UPRIGHT.u());
    }

    double rightmost() {
        return middle.x() + reach(Frame.UPRIGHT.f());
    }

    Lump scaled(double by) {
        return new Lump(middle.times(by), axes, depth * by, height * by, width * by);
    }
}
