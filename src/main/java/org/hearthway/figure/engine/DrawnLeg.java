package org.hearthway.figure.engine;

/** A leg: thigh, leg of the shorts, shank, foot, and what is worn on them. */
final class DrawnLeg {

    /** How much deeper an ankle lies than its knee when the shank points away. */
    private static final double AWAY = .10;

    private final Canvas canvas;
    private final Flesh flesh;
    private final Leg leg;
    private final boolean splint;
    private final boolean shoe;

    DrawnLeg(Canvas canvas, Body body, Leg leg, Look look) {
        this.canvas = canvas;
        this.flesh = new Flesh(body);
        this.leg = leg;
        this.splint = look.splints().contains(leg.side());
        this.shoe = look.shoes();
    }

    void draw(Path pelvis) {
        var thigh = canvas.hull(
                flesh.ball(leg.hip(), Flesh.HIP),
                flesh.ball(leg.hip().toward(leg.knee(), .45), .047),
                flesh.ball(leg.knee(), Flesh.KNEE));
        boolean away = canvas.view.nearness(leg.ankle()) < canvas.view.nearness(leg.knee()) - AWAY;
        if (away) {
            foot();
            shank();
            thigh(thigh, pelvis);
            patch("knee", leg.knee(), Flesh.KNEE, leg.ankle(), .25, shankPath());
        } else {
            thigh(thigh, pelvis);
            shank();
            patch("knee", leg.knee(), Flesh.KNEE, leg.hip(), .28, thigh);
            foot();
        }
    }

    private void thigh(Path thigh, Path pelvis) {
        canvas.paint("thigh", "skin", thigh);
        canvas.paint(
                "shorts",
                "short",
                canvas.hull(
                        flesh.ball(leg.hip(), .0575),
                        flesh.ball(leg.thigh().from(leg.hip(), -.010, .012, 0), .0565),
                        flesh.ball(leg.hip().toward(leg.knee(), .6), .0475)));
        canvas.patch("hip", "short", canvas.hull(flesh.ball(leg.hip(), .0575 + .016)), pelvis);
    }

    private Path shankPath() {
        return canvas.hull(
                flesh.ball(leg.knee(), Flesh.KNEE),
                flesh.ball(leg.calf(), Flesh.CALF),
                flesh.ball(leg.ankle(), Flesh.ANKLE));
    }

    private void shank() {
        canvas.paint("shank", "skin", shankPath());
        if (splint) {
            canvas.paint("splint", "splint", cuff());
        }
    }

    /** The stiff cup behind calf and ankle. */
    private Path cuff() {
        var top = leg.knee().toward(leg.ankle(), .30);
        return canvas.hull(
                flesh.ball(leg.shank().from(top, -.010, 0, 0), .0335),
                flesh.ball(leg.shank().from(leg.ankle(), -.004, 0, 0), .0235));
    }

    private void patch(String name, Vec joint, double radius, Vec toward, double part, Path within) {
        double r = radius * flesh.fat();
        var middle = joint.plus(toward.minus(joint).unit().times(r * part));
        canvas.patch(name, "skin", canvas.small(Lump.ball(middle, r + 1.25 * Shape.LINE / View.SCALE)), within);
    }

    private void foot() {
        var color = shoe ? "shoe" : splint ? "splint" : "skin";
        double more = shoe ? .004 : splint ? .002 : 0;
        var foot = canvas.hull(
                Lump.ball(leg.ankle(), .0225),
                Lump.ball(leg.heel(), .0195 + more),
                Lump.ball(leg.foot().from(leg.ankle(), .03, -.006, 0), .022),
                ball(leg.ball(), leg.foot(), 1, .0145 + more),
                ball(leg.ball(), leg.foot(), -1, .0145 + more));
        var toes = canvas.small(
                ball(leg.ball(), leg.foot(), 1, .0138 + more),
                ball(leg.ball(), leg.foot(), -1, .0138 + more),
                ball(leg.toe(), leg.toes(), 1, .0108 + more),
                ball(leg.toe(), leg.toes(), -1, .0108 + more));
        canvas.paint("foot", color, foot.with(toes));
        if (color.equals("skin")) {
            patch("ankle", leg.ankle(), Flesh.ANKLE, leg.knee(), .35, shankPath());
        }
    }

    private static Lump ball(Vec middle, Frame frame, int side, double radius) {
        return Lump.ball(frame.from(middle, 0, 0, side * .013), radius);
    }
}
