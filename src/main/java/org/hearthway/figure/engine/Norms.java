package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far joints go on average, by age: an angle beyond is drawn and told to the author, who may mean it.
 *
 * <p>Ages 2 to 8 and 9 to 19: CDC Normal Joint Range of Motion Study (Soucie and others, Haemophilia 2011;17:500-507),
 * of girls and boys the smaller figure. Hip, knee and dorsiflexion of the younger were read in an indexed copy, the rest
 * is from memory. Older, and what that study did not measure: the usual clinical values of the AAOS, those of the arm
 * read in a goniometry textbook's appendix, those of the leg from memory. A child with spasticity has less.
 */
public final class Norms {

    /** What is told before it is told: less is a matter of rounding. */
    private static final double SLACK = .5;

    private static final int SCHOOL = 9;
    private static final int GROWN = 20;

    /** An angle from the norms, both ways from the neutral position, in degrees. */
    private record Reach(double more, double less) {}

    private static final Map<Joint, Reach> UNMEASURED = Map.of(
            Joint.HIP_ABD, new Reach(45, 30),
            Joint.HIP_ROT, new Reach(45, 45),
            Joint.SHOULDER_ROT, new Reach(90, 70),
            Joint.WRIST, new Reach(70, 80));

    private static final Map<Joint, Reach> YOUNG = Map.of(
            Joint.HIP, new Reach(131.1, 26.2),
            Joint.KNEE, new Reach(147.8, 1.6),
            Joint.ANKLE, new Reach(22.8, 55.8),
            Joint.SHOULDER, new Reach(177.8, 60),
            Joint.ELBOW, new Reach(151.4, 2.2),
            Joint.PRON, new Reach(79.6, 86.4));

    private static final Map<Joint, Reach> OLDER = Map.of(
            Joint.HIP, new Reach(134.9, 18.2),
            Joint.KNEE, new Reach(142.2, 1.8),
            Joint.ANKLE, new Reach(16.3, 52.8),
            Joint.SHOULDER, new Reach(170.9, 60),
            Joint.ELBOW, new Reach(148.3, 5.3),
            Joint.PRON, new Reach(79.8, 87.8));

    private static final Map<Joint, Reach> ADULT = Map.of(
            Joint.HIP, new Reach(120, 30),
            Joint.KNEE, new Reach(135, 5),
            Joint.ANKLE, new Reach(20, 50),
            Joint.SHOULDER, new Reach(180, 60),
            Joint.ELBOW, new Reach(150, 7),
            Joint.PRON, new Reach(80, 80));

    /**
     * An angle beyond its norm.
     *
     * @param more flexion, abduction and the like; else the other way
     * @param degrees as settled, away from the neutral position
     * @param norm in degrees
     * @param years the ages that the norm is of
     */
    public record Beyond(Side side, Joint joint, boolean more, double degrees, double norm, Years years) {}

    /** The ages that a norm is of. */
    public enum Years {
        TWO_TO_EIGHT,
        NINE_TO_NINETEEN,
        GROWN
    }

    private Norms() {}

    private static Years years(double age) {
        return age < SCHOOL ? Years.TWO_TO_EIGHT : age < GROWN ? Years.NINE_TO_NINETEEN : Years.GROWN;
    }

    private static Optional<Reach> reach(Joint joint, Years years) {
        var measured = switch (years) {
            case TWO_TO_EIGHT -> YOUNG;
            case NINE_TO_NINETEEN -> OLDER;
            case GROWN -> ADULT;
        };
        return Optional.ofNullable(measured.get(joint)).or(() -> Optional.ofNullable(UNMEASURED.get(joint)));
    }

    /** What of a pose goes beyond the norm of an age, right side first. */
    static List<Beyond> beyond(Pose pose, double age) {
        var years = years(age);
        var found = new ArrayList<Beyond>();
        for (var side : Side.values()) {
            for (var joint : Joint.values()) {
                double angle = pose.get(side, joint);
                reach(joint, years).ifPresent(reach -> {
                    double norm = angle > 0 ? reach.more() : reach.less();
                    if (Math.abs(angle) > norm + SLACK) {
                        found.add(new Beyond(side, joint, angle > 0, Math.abs(angle), norm, years));
                    }
                });
            }
        }
        return found;
    }
}
