package org.hearthway.figure.engine;

/** An arm: upper arm, sleeve, forearm, and a hand that can close. */
final class DrawnArm {

    private final Canvas canvas;
    private final Flesh flesh;
    private final Arm arm;

    DrawnArm(Canvas canvas, Body body, Arm arm) {
        this.canvas = canvas;
        this.flesh = new Flesh(body);
        this.arm = arm;
    }

    void draw(Path shirt) {
        boolean away = canvas.view.nearness(arm.wrist()) < canvas.view.nearness(arm.elbow()) - .09;
        if (away) {
            hand();
            forearm();
            upper(shirt);
        } else {
            var upper = upper(shirt);
            forearm();
            patch("elbow", arm.elbow(), Flesh.ELBOW, arm.shoulder(), upper);
            hand();
        }
    }

    private Path upper(Path shirt) {
        var upper = canvas.paint(
                "upper",
                "skin",
                canvas.hull(
                        flesh.ball(arm.shoulder(), Flesh.SHOULDER),
                        flesh.ball(arm.shoulder().toward(arm.elbow(), .5), .0265),
                        flesh.ball(arm.elbow(), Flesh.ELBOW)));
        canvas.paint(
                "sleeve",
                "shirt",
                canvas.hull(
                        flesh.ball(arm.shoulder(), .0335),
                        flesh.ball(arm.shoulder().toward(arm.elbow(), .5), .0300)));
        canvas.patch("shoulder", "shirt", canvas.small(flesh.ball(arm.shoulder(), .0335 + .012)), shirt);
        return upper;
    }

    private void forearm() {
        canvas.paint(
                "forearm",
                "skin",
                canvas.hull(
                        flesh.ball(arm.elbow(), Flesh.ELBOW),
                        flesh.ball(arm.elbow().toward(arm.wrist(), .25), .0235),
                        flesh.ball(arm.wrist(), Flesh.WRIST)));
    }

    private void patch(String name, Vec joint, double radius, Vec toward, Path within) {
        double r = radius * flesh.fat();
        var middle = joint.plus(toward.minus(joint).unit().times(r * .28));
        canvas.patch(name, "skin", canvas.small(Lump.ball(middle, r + 1.25 * Shape.LINE / View.SCALE)), within);
    }

    private void hand() {
        var hand = arm.hand();
        var palm = canvas.small(
                Lump.ball(arm.wrist(), .0152),
                Lump.ball(hand.from(arm.knuckle(), .0115, 0, 0), .0128),
                Lump.ball(hand.from(arm.knuckle(), -.0115, 0, 0), .0128));
        var fingers = canvas.small(
                Lump.ball(hand.from(arm.knuckle(), .0115, 0, 0), .0120),
                Lump.ball(hand.from(arm.knuckle(), -.0115, 0, 0), .0120),
                Lump.ball(hand.from(arm.bend(), .0105, 0, 0), .0112),
                Lump.ball(hand.from(arm.bend(), -.0105, 0, 0), .0112));
        var tips = canvas.small(
                Lump.ball(hand.from(arm.bend(), .0105, 0, 0), .0112),
                Lump.ball(hand.from(arm.bend(), -.0105, 0, 0), .0112),
                Lump.ball(hand.from(arm.tip(), .0085, 0, 0), .0094),
                Lump.ball(hand.from(arm.tip(), -.0085, 0, 0), .0094));
        var thumb = canvas.small(Lump.ball(arm.thumbRoot(), .0105), Lump.ball(arm.thumbTip(), .0082));
        canvas.paint("hand", "skin", palm.with(fingers).with(tips).with(thumb));
        var forearm = canvas.small(
                flesh.ball(arm.elbow().toward(arm.wrist(), .25), .0235), flesh.ball(arm.wrist(), Flesh.WRIST));
        patch("wrist", arm.wrist(), Flesh.WRIST, arm.elbow(), forearm);
    }
}
