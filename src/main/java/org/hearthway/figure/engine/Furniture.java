package org.hearthway.figure.engine;

import java.util.List;

/** Draws what carries the body; each piece says what of it lies behind the child and what before. */
final class Furniture {

    private final View view;
    private final Proportions size;
    private final List<Shape> shapes;
    private final double left;
    private final double right;

    /** For a figure that reaches from left to right in body heights, which gives the mat its length. */
    Furniture(View view, Proportions size, List<Shape> shapes, double left, double right) {
        this.view = view;
        this.size = size;
        this.shapes = shapes;
        this.left = left;
        this.right = right;
    }

    void draw(Support support) {
        var solid = new Solid(view, shapes, support.kind().key(), Layer.BACK);
        double top = support.top(size);
        double at = support.get("at", 0);
        switch (support.kind()) {
            case MAT -> mat(solid, support.get("half", .19));
            case BENCH -> bench(solid, at, top, support.get("half", .16));
            case CHAIR -> chair(solid, at, top, support);
            case WHEELCHAIR -> new Wheelchair(solid, at, top).draw(support.get("back", .35));
            case STEP -> stairs(solid, support.get("at", .08), top, support.get("depth", .34), 1);
            case STAIRS -> {
                stairs(solid, support.get("at", .08), top, support.get("depth", .19), (int) support.get("count", 3));
                if (support.get("rail", 0) > 0) {
                    rail(solid, support, top);
                }
            }
            case TABLE ->
                table(
                        solid.on(inFront()),
                        support.get("at", .18),
                        top,
                        support.get("half", .17),
                        support.get("depth", .30),
                        support.get("aside", 0));
            case WALL -> wall(solid, support.get("at", .4), support.get("height", 1.12));
            case WALKER -> walker(solid, support.get("at", .17), top);
            case STANDING_FRAME -> frame(solid);
            case ROLL ->
                solid.roll("wall", "thing", new Vec(at, support.get("r", .045), 0), support.get("r", .045), .14);
            case BED -> bed(solid, at, top, support.get("half", .2), support.get("depth", .8));
            case CUSHION ->
                solid.box(
                        "wall",
                        "thing",
                        new Vec(at - support.get("depth", .2) / 2, 0, -support.get("half", .14)),
                        new Vec(at + support.get("depth", .2) / 2, top, support.get("half", .14)));
            case BALL -> solid.ball("toy", new Vec(at, support.get("r", .125), 0), support.get("r", .125));
            case TREADMILL -> treadmill(solid, at, top);
            case LINE -> solid.box("toy", "toy", new Vec(left - .10, -.004, -.016), new Vec(right + .30, 0, .016));
        }
    }

    /** Seen from in front, what stands before the child covers the legs and lies under the hands. */
    private int inFront() {
        return view.yaw() > 45 && view.yaw() < 135 ? Layer.HANDS : Layer.BACK;
    }

    private void mat(Solid solid, double half) {
        solid.box("mat", "mat", new Vec(left - .07, -.022, -half), new Vec(right + .07, 0, half));
    }

    private static void legs(Solid solid, double x0, double x1, double half, double top, double aside) {
        for (double z : new double[] {aside - half, aside + half}) {
            for (double x : new double[] {x0, x1}) {
                solid.box("wood", "thing", new Vec(x - .012, 0, z - .012), new Vec(x + .012, top, z + .012));
            }
        }
    }

    private void bench(Solid solid, double at, double top, double half) {
        legs(solid, at - .105, at + .095, half - .02, top - .03, 0);
        solid.box("wood", "thing", new Vec(at - .13, top - .032, -half), new Vec(at + .12, top, half));
    }

    private static void bed(Solid solid, double at, double top, double half, double depth) {
        legs(solid, at + .03, at + depth - .03, half - .03, top - .09, 0);
        solid.box("wood", "thing", new Vec(at, top - .10, -half), new Vec(at + depth, top - .05, half));
        solid.box("wall", "thing", new Vec(at, top - .05, -half), new Vec(at + depth, top, half));
    }

    private void chair(Solid solid, double at, double top, Support support) {
        double half = support.get("half", .14);
        for (double z : new double[] {-half + .015, half - .015}) {
            solid.box(
                    "wood",
                    "thing",
                    new Vec(at - .15, top, z - .012),
                    new Vec(at - .126, top + support.get("back", .35), z + .012));
        }
        solid.box(
                "wood",
                "thing",
                new Vec(at - .148, top + support.get("back", .35) - .12, -half),
                new Vec(at - .130, top + support.get("back", .35) - .02, half));
        if (support.get("arms", 0) > 0) {
            armrest(solid, at, top, -half);
        }
        bench(solid, at, top, half);
        if (support.get("arms", 0) > 0) {
            armrest(solid.on(Layer.HANDS), at, top, half);
        }
    }

    private static void armrest(Solid solid, double at, double top, double z) {
        double rest = top + Support.ARMREST - .008;
        solid.tube("metal", "thing", 5, new Vec(at + .095, top - .01, z), new Vec(at + .095, rest, z));
        solid.tube("grip", "thing", 8, new Vec(at - .135, rest, z), new Vec(at + .11, rest, z));
    }

    private static void treadmill(Solid solid, double at, double top) {
        handrail(solid, at, top, -Support.ASIDE);
        solid.box("metal", "thing", new Vec(at - .36, 0, -.15), new Vec(at + .36, top, .15));
        solid.tube("grip", "thing", 5, new Vec(at - .34, top, .10), new Vec(at + .30, top, .10));
        solid.tube("grip", "thing", 5, new Vec(at - .34, top, -.10), new Vec(at + .30, top, -.10));
        solid.box("wall", "thing", new Vec(at + .30, .50, -.12), new Vec(at + .33, .60, .12));
        handrail(solid.on(Layer.HANDS), at, top, Support.ASIDE);
    }

    private static void handrail(Solid solid, double at, double top, double z) {
        solid.tube("metal", "thing", 6, new Vec(at + .34, top, z), new Vec(at + .315, .56, z));
        solid.tube("metal", "thing", 5, new Vec(at + .02, top, z), new Vec(at + .02, Support.HANDRAIL - .01, z));
        solid.tube(
                "grip",
                "thing",
                6,
                new Vec(at - .06, Support.HANDRAIL - .01, z),
                new Vec(at + .26, Support.HANDRAIL - .01, z),
                new Vec(at + .318, .53, z));
    }

    private void stairs(Solid solid, double at, double rise, double depth, int count) {
        for (int i = count; i >= 1; i--) {
            double end = at + depth * count + (count == 1 ? 0 : .03);
            solid.box(
                    "wood", "thing", new Vec(at + depth * (i - 1), rise * (i - 1), -.15), new Vec(end, rise * i, .15));
        }
    }

    private static void rail(Solid solid, Support stairs, double rise) {
        double at = stairs.get("at", .08);
        double depth = stairs.get("depth", .19);
        int count = (int) stairs.get("count", 3);
        double z = -Support.ASIDE;
        double begin = stairs.railing() + rise * .5;
        double slope = rise / depth;
        for (int i = 0; i < count; i++) {
            double x = at + depth * i + .04;
            double y = begin + (x - at - .09) * slope;
            solid.tube("metal", "thing", 4, new Vec(x, rise * (i + 1), z), new Vec(x, y, z));
        }
        double from = at - .02;
        double to = at + depth * count;
        solid.tube(
                "metal",
                "thing",
                6,
                new Vec(from, begin + (from - at - .09) * slope, z),
                new Vec(to, begin + (to - at - .09) * slope, z));
    }

    private void table(Solid solid, double at, double top, double half, double depth, double aside) {
        legs(solid, at + .02, at + depth - .02, half - .02, top - .03, aside);
        solid.box("wood", "thing", new Vec(at, top - .032, aside - half), new Vec(at + depth, top, aside + half));
    }

    private void wall(Solid solid, double at, double height) {
        solid.box("wall", "thing", new Vec(at, -.01, -.24), new Vec(at + .035, height, .24));
    }

    private void walker(Solid solid, double at, double top) {
        half(solid.on(Layer.BACK), at, top, -Support.ASIDE);
        solid.tube(
                "metal",
                "thing",
                5,
                new Vec(at + .20, top * .62, -Support.ASIDE),
                new Vec(at + .20, top * .62, Support.ASIDE));
        solid.tube(
                "metal",
                "thing",
                5,
                new Vec(at + .13, top - .004, -Support.ASIDE),
                new Vec(at + .13, top - .004, Support.ASIDE));
        half(solid.on(Layer.HANDS), at, top, Support.ASIDE);
    }

    private void half(Solid solid, double at, double top, double z) {
        solid.wheel(new Vec(at + .24, .030, z), .030, 4);
        solid.tube(
                "metal",
                "thing",
                5,
                new Vec(at + .24, .035, z),
                new Vec(at + .13, top - .004, z),
                new Vec(at - .05, top - .004, z));
        solid.tube("metal", "thing", 5, new Vec(at - .05, top - .004, z), new Vec(at - .08, .012, z));
        solid.tube("metal", "thing", 4, new Vec(at - .066, top * .5, z), new Vec(at + .187, top * .5, z));
        solid.tube("grip", "thing", 8, new Vec(at - .05, top, z), new Vec(at + .055, top, z));
    }

    private void frame(Solid solid) {
        solid.box("metal", "thing", new Vec(-.16, -.02, -.17), new Vec(.26, 0, .17));
        for (double z : new double[] {-.12, .12}) {
            solid.tube("metal", "thing", 7, new Vec(.17, 0, z), new Vec(.17, .53, z));
        }
        solid.box("toy", "toy", new Vec(-.125, .45, -.10), new Vec(-.085, .55, .10));
        solid.tube("metal", "thing", 5, new Vec(-.10, .53, -.12), new Vec(.17, .53, -.12));
        solid.on(inFront());
        solid.box("toy", "toy", new Vec(.062, .235, -.10), new Vec(.10, .315, .10));
        solid.tube("metal", "thing", 5, new Vec(.10, .275, 0), new Vec(.17, .275, 0));
        solid.box("wood", "thing", new Vec(.075, .535, -.19), new Vec(.40, .56, .19));
        solid.on(Layer.HANDS).tube("metal", "thing", 5, new Vec(-.10, .50, .12), new Vec(.17, .50, .12));
    }
}
