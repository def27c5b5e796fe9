package org.hearthway.figure.engine;

/** A wheelchair with hand rims, its footplates under the feet. */
final class Wheelchair {

    private static final double HALF = .15;

    private final Solid solid;
    private final double at;
    private final double top;

    Wheelchair(Solid solid, double at, double top) {
        this.solid = solid;
        this.at = at;
        this.top = top;
    }

    void draw(double back) {
        side(-HALF);
        solid.box("metal", "thing", new Vec(at - .145, top, -HALF + .02), new Vec(at - .12, top + back, HALF - .02));
        solid.box("metal", "thing", new Vec(at - .13, top - .028, -HALF + .01), new Vec(at + .14, top, HALF - .01));
        solid.box("metal", "thing", new Vec(at + .17, -.008, -.10), new Vec(at + .36, 0, .10));
        solid.tube("metal", "thing", 5, new Vec(at + .14, top - .014, .12), new Vec(at + .20, .0, .12));
        solid.on(Layer.HANDS);
        side(HALF);
    }

    private void side(double z) {
        solid.tube("grip", "thing", 6, new Vec(at - .19, top + .30, z), new Vec(at - .13, top + .30, z));
        solid.tube("metal", "thing", 5, new Vec(at - .13, top + .30, z), new Vec(at - .13, .06, z));
        solid.wheel(new Vec(at + .18, .045, z), .045, 4);
        solid.wheel(new Vec(at - .04, .165, z), .165, 5);
    }
}
