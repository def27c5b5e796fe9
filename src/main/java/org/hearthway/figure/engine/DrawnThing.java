package org.hearthway.figure.engine;

import java.util.List;

/** Something held or reached for, where it is at a time. */
final class DrawnThing {

    /** A band as long as at rest is this wide; pulled twice as long it is half as wide. */
    private static final double BAND = 9;

    private static final double AT_REST = .20;

    private DrawnThing() {}

    static void draw(FigureSheet.Thing thing, View view, Body body, double time, int number, List<Shape> shapes) {
        int layer = switch (thing.depth()) {
            case BACK -> Layer.BACK;
            case HANDS -> Layer.HANDS;
            case FRONT -> Layer.FRONT;
        };
        var solid = new Solid(view, shapes, "thing" + number + ".", layer);
        switch (thing.sort()) {
            case BALL -> solid.ball("toy", middle(thing, body, time), thing.size());
            case BLOCK -> {
                var middle = middle(thing, body, time);
                var half = new Vec(thing.size() / 2, thing.size() / 2, thing.size() / 2);
                solid.box("toy", "toy", middle.minus(half), middle.plus(half));
            }
            case BAND -> band(thing, body, solid);
            case PILLOW -> solid.pillow("wall", "thing", middle(thing, body, time), thing.size());
            case TOWEL -> solid.rolled("wall", "thing", middle(thing, body, time), thing.size(), across(thing, body));
        }
    }

    /** A towel lies across the hand that holds it, or across the page. */
    private static Vec across(FigureSheet.Thing thing, Body body) {
        if (thing.track().isEmpty()) {
            return new Vec(0, 0, 1);
        }
        var side = thing.track().get(0).startsWith("L") ? Side.LEFT : Side.RIGHT;
        return body.arm(side).hand().f();
    }

    private static void band(FigureSheet.Thing thing, Body body, Solid solid) {
        var from = body.point(thing.track().get(0)).orElseThrow();
        var to = body.point(thing.track().get(1)).orElseThrow();
        double length = Math.max(.05, to.minus(from).length());
        double width = Math.max(4.5, Math.min(BAND, BAND * Math.sqrt(AT_REST / length)));
        solid.tube("toy-b", "toy", width, from, from.toward(to, .5), to);
    }

    private static Vec middle(FigureSheet.Thing thing, Body body, double time) {
        if (!thing.track().isEmpty()) {
            return body.point(thing.track().get(0)).orElseThrow().plus(thing.offset());
        }
        var places = thing.places();
        double place = time * (places.size() - 1);
        int first = Math.min((int) place, places.size() - 1);
        int next = Math.min(first + 1, places.size() - 1);
        return places.get(first).toward(places.get(next), place - first);
    }
}
