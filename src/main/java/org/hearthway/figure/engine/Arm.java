package org.hearthway.figure.engine;

/** An arm: its joints and the frames of its segments. */
record Arm(
        Side side,
        Vec shoulder,
        Vec elbow,
        Vec wrist,
        Frame upper,
        Frame fore,
        Frame hand,
        Frame fingers,
        Frame fingertips,
        double thumb,
        double length) {

    /** The shoulder joint rides forward and up as the arm is raised. */
    static Arm of(Pose pose, Proportions size, Side side, Frame thorax, Vec line) {
        int m = side.sign;
        double flex = pose.get(side, Joint.SHOULDER);
        double out = pose.get(side, Joint.SHOULDER_ABD);
        double forward = .022 * StrictMath.sin(Math.toRadians(Math.max(-60, Math.min(120, flex))));
        double up = .020 * Math.max(0, Math.max(flex, out)) / 180;
        var shoulder = thorax.from(line, forward, up, m * size.shoulders());
        var upper = thorax.sag(-flex).abd(m * out).rot(m * pose.get(side, Joint.SHOULDER_ROT));
        var elbow = upper.from(shoulder, 0, -size.upperArm(), 0);
        var fore = upper.sag(-pose.get(side, Joint.ELBOW)).rot(-m * pose.get(side, Joint.PRON));
        var wrist = fore.from(elbow, 0, -size.forearm(), 0);
        var hand = fore.abd(m * pose.get(side, Joint.WRIST));
        var fingers = hand.abd(-m * pose.get(side, Joint.FINGERS));
        var fingertips = fingers.abd(-m * .8 * pose.get(side, Joint.FINGERS));
        double thumb = pose.get(side, Joint.THUMB);
        return new Arm(side, shoulder, elbow, wrist, upper, fore, hand, fingers, fingertips, thumb, size.hand());
    }

    /** The side of the palm, as a direction. */
    Vec palmward() {
        return hand.r().times(-side.sign);
    }

    Vec palm() {
        return wrist.plus(hand.u().times(-.34 * length)).plus(palmward().times(.004));
    }

    Vec knuckle() {
        return hand.from(wrist, 0, -.46 * length, 0);
    }

    /** Of the fingers' middle joints. */
    Vec bend() {
        return fingers.from(knuckle(), 0, -.24 * length, 0);
    }

    Vec tip() {
        return fingertips.from(bend(), 0, -.22 * length, 0);
    }

    Vec thumbRoot() {
        return wrist.plus(hand.u().times(-.14 * length)).plus(hand.f().times(.008));
    }

    /** Out along the hand's edge, or across the palm when it closes. */
    Vec thumbTip() {
        double c = StrictMath.cos(Math.toRadians(thumb));
        double s = StrictMath.sin(Math.toRadians(thumb));
        var way = hand.f().times(.030 * c).plus(palmward().times(.034 * s));
        return wrist.plus(hand.u().times(-.46 * length)).plus(way);
    }
}
