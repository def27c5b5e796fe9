package org.hearthway.figure.engine;

import java.util.Set;

/** A whole body on its layers: what is far behind the trunk, what is near before it. */
final class DrawnBody {

    /** A side is far when its axis points away from the viewer by more than this. */
    private static final double FAR = .4;

    private static final double BEHIND = .04;

    private final Canvas canvas;
    private final Body body;
    private final Flesh flesh;
    private final Look look;

    DrawnBody(Canvas canvas, Body body, Look look) {
        this.canvas = canvas;
        this.body = body;
        this.flesh = new Flesh(body);
        this.look = look;
    }

    /** Draws the child. */
    void draw() {
        var shirt = shirt();
        var pelvis = pelvis();
        trunk(shirt, pelvis, Layer.TRUNK, Layer.HEAD);
        for (var side : Side.values()) {
            boolean far = facing(side, body.pelvis) < -FAR;
            canvas.on(far ? Layer.FAR_LEG : Layer.NEAR_LEG + deeper(side), far, side.letter + "leg");
            new DrawnLeg(canvas, body, body.leg(side), look).draw(pelvis);
        }
        for (var side : Side.values()) {
            boolean far = facing(side, body.thorax) < -FAR;
            boolean behind = far || (facing(side, body.thorax) < FAR && isBehind(side));
            canvas.on(behind ? Layer.FAR_ARM : Layer.NEAR_ARM, far, side.letter + "arm");
            new DrawnArm(canvas, body, body.arm(side)).draw(shirt);
        }
    }

    /** Draws the helper: all behind the child but the arms that lie over it. */
    void drawHelper(Set<Side> front) {
        var shirt = shirt();
        var pelvis = pelvis();
        for (var side : Side.values()) {
            boolean far = facing(side, body.pelvis) < -FAR;
            canvas.on(Layer.HELPER + (far ? 1 : 4), far, side.letter + "leg");
            new DrawnLeg(canvas, body, body.leg(side), look).draw(pelvis);
        }
        trunk(shirt, pelvis, Layer.HELPER + 2, Layer.HELPER + 6);
        for (var side : Side.values()) {
            boolean far = facing(side, body.thorax) < -FAR;
            int layer = front.contains(side) ? Layer.HELPING_HAND : Layer.HELPER + (far ? 0 : 5);
            canvas.on(layer, far, side.letter + "arm");
            new DrawnArm(canvas, body, body.arm(side)).draw(shirt);
        }
    }

    private double facing(Side side, Frame frame) {
        return frame.r().times(side.sign).dot(canvas.view.viewer());
    }

    /** 1 for the leg that lies over the other one. */
    private int deeper(Side side) {
        double mine = nearness(side);
        double other = nearness(side.other());
        return mine > other + 1e-9 || (Math.abs(mine - other) < 1e-9 && side == Side.RIGHT) ? 1 : 0;
    }

    private double nearness(Side side) {
        return canvas.view.viewer().dot(body.leg(side).knee());
    }

    private boolean isBehind(Side side) {
        return canvas.view.nearness(body.arm(side).wrist()) < canvas.view.nearness(body.chest) - BEHIND;
    }

    private Path pelvis() {
        return canvas.hull(flesh.hips(), flesh.pelvisTop());
    }

    private Path shirt() {
        var lower = canvas.hull(flesh.hem(), flesh.waist(), flesh.chest());
        var upper = canvas.hull(
                flesh.chest(),
                flesh.breast(),
                flesh.shoulderLine(),
                flesh.shoulder(Side.RIGHT),
                flesh.shoulder(Side.LEFT),
                flesh.neckSlope());
        return lower.with(upper);
    }

    private void trunk(Path shirt, Path pelvis, int layer, int headLayer) {
        canvas.on(layer, false, "trunk");
        var nape = body.skull.from(body.head, -.06 * body.unit(), -.25 * body.unit(), 0);
        canvas.paint("neck", "skin", canvas.hull(flesh.ball(body.line, Flesh.NECK), flesh.ball(nape, .030)));
        canvas.paint("pelvis", "short", pelvis);
        canvas.paint("shirt", "shirt", shirt);
        canvas.on(headLayer, false, "head");
        new DrawnHead(canvas, body, look.hair()).draw();
    }
}
