package org.hearthway.figure.engine;

import java.util.Optional;

/** The body in a pose: where each joint is and which way each segment points. */
public final class Body {

    /** How far up the trunk its two joints lie. */
    private static final double WAIST = .30;

    private static final double CHEST = .57;

    final Proportions size;
    final Pose pose;
    final Vec hip;
    final Vec waist;
    final Vec chest;
    final Vec line;
    final Vec head;
    final Frame pelvis;
    final Frame lumbar;
    final Frame thorax;
    final Frame neck;
    final Frame skull;
    private final Leg rightLeg;
    private final Leg leftLeg;
    private final Arm rightArm;
    private final Arm leftArm;

    Body(Pose pose, Proportions size) {
        this.pose = pose;
        this.size = size;
        hip = new Vec(pose.get(Axis.X), pose.get(Axis.Y), pose.get(Axis.Z));
        pelvis = pose.base().sag(pose.get(Axis.TILT)).rot(pose.get(Axis.TURN)).abd(pose.get(Axis.LEAN));
        lumbar = bent(pelvis, .55);
        thorax = bent(lumbar, .45);
        waist = pelvis.from(hip, 0, WAIST * size.trunk(), 0);
        chest = lumbar.from(waist, 0, (CHEST - WAIST) * size.trunk(), 0);
        line = thorax.from(chest, 0, (1 - CHEST) * size.trunk(), 0);
        neck = nodded(thorax).sag(8);
        skull = nodded(neck.sag(-8));
        head = skull.from(neck.from(line, 0, size.neck(), 0), .06 * unit(), .44 * unit(), 0);
        rightLeg = Leg.of(pose, size, Side.RIGHT, pelvis, hip);
        leftLeg = Leg.of(pose, size, Side.LEFT, pelvis, hip);
        rightArm = Arm.of(pose, size, Side.RIGHT, thorax, line);
        leftArm = Arm.of(pose, size, Side.LEFT, thorax, line);
    }

    private Frame bent(Frame below, double part) {
        return below.sag(part * pose.get(Axis.TRUNK))
                .abd(-part * pose.get(Axis.TRUNK_SIDE))
                .rot(part * pose.get(Axis.TRUNK_TURN));
    }

    private Frame nodded(Frame below) {
        return below.sag(pose.get(Axis.NECK) / 2)
                .abd(-pose.get(Axis.NECK_SIDE) / 2)
                .rot(pose.get(Axis.NECK_TURN) / 2);
    }

    /** The head's measure: a tenth larger than life, which keeps children childlike in small pictures. */
    double unit() {
        return 1.10 * size.head();
    }

    Leg leg(Side side) {
        return side == Side.RIGHT ? rightLeg : leftLeg;
    }

    Arm arm(Side side) {
        return side == Side.RIGHT ? rightArm : leftArm;
    }

    /** A point that pose files name for arrows and lenses: {@code hip}, {@code chest}, {@code Rknee}, {@code Ltip}. */
    Optional<Vec> point(String name) {
        if (name.startsWith("R") || name.startsWith("L")) {
            var side = name.charAt(0) == 'R' ? Side.RIGHT : Side.LEFT;
            return ofLimb(side, name.substring(1));
        }
        return switch (name) {
            case "hip", "pelvis" -> Optional.of(hip);
            case "waist" -> Optional.of(waist);
            case "belly" -> Optional.of(Grasp.on(this, "belly"));
            case "chest" -> Optional.of(chest);
            case "c7" -> Optional.of(line);
            case "headC" -> Optional.of(head);
            case "nose" -> Optional.of(skull.from(head, .40 * unit(), -.10 * unit(), 0));
            default -> Optional.empty();
        };
    }

    private Optional<Vec> ofLimb(Side side, String name) {
        var leg = leg(side);
        var arm = arm(side);
        return switch (name) {
            case "hip" -> Optional.of(leg.hip());
            case "knee" -> Optional.of(leg.knee());
            case "ankle" -> Optional.of(leg.ankle());
            case "heel" -> Optional.of(leg.heel());
            case "ball" -> Optional.of(leg.ball());
            case "toe" -> Optional.of(leg.toe());
            case "shoulder" -> Optional.of(arm.shoulder());
            case "elbow" -> Optional.of(arm.elbow());
            case "wrist" -> Optional.of(arm.wrist());
            case "knuck" -> Optional.of(arm.knuckle());
            case "tip" -> Optional.of(arm.tip());
            default -> Optional.empty();
        };
    }

    /** Whether {@link #point} knows the name. */
    public static boolean knows(String name) {
        return new Body(Pose.of(Posture.STANDING), Proportions.at(6))
                .point(name)
                .isPresent();
    }
}
