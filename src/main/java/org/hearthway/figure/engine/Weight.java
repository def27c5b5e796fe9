package org.hearthway.figure.engine;

/**
 * Where the body's weight is. Fractions of the mass: Plagenhoef, Evans and Abdelnour 1983, the mean of men and women
 * (read); adult values, good enough to see whether a drawn child would fall.
 */
final class Weight {

    private Weight() {}

    static Vec middle(Body body) {
        var sum = body.head.times(8.6).plus(body.hip.toward(body.line, .5).times(45.9));
        double mass = 8.6 + 45.9;
        for (var side : Side.values()) {
            var arm = body.arm(side);
            var leg = body.leg(side);
            sum = sum.plus(arm.shoulder().toward(arm.elbow(), .44).times(3.08))
                    .plus(arm.elbow().toward(arm.wrist(), .43).times(1.75))
                    .plus(arm.palm().times(.58))
                    .plus(leg.hip().toward(leg.knee(), .43).times(11.1))
                    .plus(leg.knee().toward(leg.ankle(), .43).times(5.05))
                    .plus(leg.heel().toward(leg.ball(), .5).times(1.35));
            mass += 3.08 + 1.75 + .58 + 11.1 + 5.05 + 1.35;
        }
        return sum.times(1 / mass);
    }

    /** Where the middle of the standing feet is, along x. */
    static double over(Body body, Iterable<Side> feet) {
        double sum = 0;
        int count = 0;
        for (var side : feet) {
            sum += (body.leg(side).heel().x() + body.leg(side).ball().x()) / 2;
            count++;
        }
        return count == 0 ? middle(body).x() : sum / count;
    }
}
