package org.hearthway.figure.engine;

import java.util.List;

/**
 * The ellipsoids around the joints, in body heights, tuned by eye for a child of six and made wider or slimmer with
 * age.
 */
final class Flesh {

    static final double HIP = .055;
    static final double KNEE = .0345;
    static final double CALF = .0335;
    static final double ANKLE = .0205;
    static final double SHOULDER = .030;
    static final double ELBOW = .0235;
    static final double WRIST = .0160;
    static final double NECK = .031;

    private final Body body;
    private final double fat;

    Flesh(Body body) {
        this.body = body;
        this.fat = body.size.fat();
    }

    double fat() {
        return fat;
    }

    Lump ball(Vec middle, double radius) {
        return Lump.ball(middle, radius * fat);
    }

    private Lump lump(Vec middle, Frame axes, double width, double depth, double height) {
        return new Lump(middle, axes, depth, height, width);
    }

    Lump hips() {
        return lump(body.hip, body.pelvis, .094, .066, .048);
    }

    Lump pelvisTop() {
        return lump(body.pelvis.from(body.hip, 0, .05, 0), body.pelvis, .081, .058, .02);
    }

    Lump hem() {
        return lump(body.pelvis.from(body.hip, 0, .045, 0), body.pelvis, .084, .061, .018);
    }

    Lump waist() {
        double air = body.pose.get(Axis.BREATH);
        return lump(body.lumbar.from(body.waist, .005 + .019 * air, 0, 0), body.lumbar, .077, .058 + .012 * air, .035);
    }

    Lump chest() {
        double air = body.pose.get(Axis.BREATH);
        return lump(body.thorax.from(body.chest, .006 * air, 0, 0), body.thorax, .084, .058 + .006 * air, .04);
    }

    Lump breast() {
        return lump(body.thorax.from(body.chest, 0, .055, 0), body.thorax, .092, .062, .05);
    }

    Lump shoulderLine() {
        return lump(body.thorax.from(body.line, 0, -.016, 0), body.thorax, .080, .046, .020);
    }

    Lump neckSlope() {
        return lump(body.thorax.from(body.line, 0, .004, 0), body.thorax, .046, .036, .012);
    }

    Lump shoulder(Side side) {
        return ball(body.arm(side).shoulder(), SHOULDER);
    }

    Lump skull() {
        double h = body.unit();
        return new Lump(body.skull.from(body.head, -.045 * h, .10 * h, 0), body.skull, .435 * h, .38 * h, .385 * h);
    }

    Lump jaw() {
        double h = body.unit();
        return new Lump(body.skull.from(body.head, .075 * h, -.235 * h, 0), body.skull, .255 * h, .235 * h, .25 * h);
    }

    /** What may lie on the ground: whatever of pelvis and chest is lowest carries the body as it rolls. */
    List<Lump> pelvisGround() {
        return List.of(
                hips(),
                ball(body.leg(Side.RIGHT).hip(), .042),
                ball(body.leg(Side.LEFT).hip(), .042));
    }

    List<Lump> chestGround() {
        return List.of(breast(), shoulder(Side.RIGHT), shoulder(Side.LEFT));
    }
}
