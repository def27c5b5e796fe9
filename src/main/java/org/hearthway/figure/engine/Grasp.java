package org.hearthway.figure.engine;

import java.util.regex.Pattern;

/** Where a hand takes hold of a body: on the skin and not in the joint. */
final class Grasp {

    private static final Pattern POINT =
            Pattern.compile("\\[\\s*(-?\\d*\\.?\\d+)\\s*,\\s*(-?\\d*\\.?\\d+)\\s*,\\s*(-?\\d*\\.?\\d+)\\s*]");

    private Grasp() {}

    static boolean isPoint(String target) {
        return POINT.matcher(target).matches();
    }

    static Vec point(String target) {
        var numbers = POINT.matcher(target);
        if (!numbers.matches()) {
            throw new IllegalArgumentException(target);
        }
        return new Vec(
                Double.parseDouble(numbers.group(1)),
                Double.parseDouble(numbers.group(2)),
                Double.parseDouble(numbers.group(3)));
    }

    static boolean isPart(String target) {
        try {
            return !Contact.bodyPart(ofWhom(target)).isEmpty();
        } catch (IllegalArgumentException unknown) {
            return false;
        }
    }

    static boolean isOfTheChild(String target) {
        return target.startsWith("child ");
    }

    static String ofWhom(String target) {
        return isOfTheChild(target) ? target.substring("child ".length()) : target;
    }

    static Vec on(Body body, String target) {
        var place = Contact.bodyPart(ofWhom(target)).get(0);
        var leg = body.leg(place.side());
        var arm = body.arm(place.side());
        int m = place.side().sign;
        return switch (place.part()) {
            case KNEE ->
                leg.thigh()
                        .from(leg.kneecap(), 0, .014, m * .028)
                        .plus(leg.shank().f().plus(leg.thigh().f()).unit().times(.014));
            case SHIN -> leg.knee().toward(leg.ankle(), .5).plus(leg.shank().f().times(.028));
            case CALF -> leg.calf().plus(leg.shank().f().times(-.03));
            case ANKLE -> leg.shank().from(leg.ankle(), .020, .012, 0);
            case HEEL -> leg.foot().from(leg.heel(), -.014, -.008, 0);
            case FOOT, INSTEP -> leg.foot().from(leg.instep(), 0, .018, 0);
            case TOES -> leg.toe();
            case THIGH -> leg.thigh().from(leg.hip().toward(leg.knee(), .6), .045, 0, 0);
            case HIP -> body.pelvis.from(leg.hip(), 0, .01, m * .042);
            case HAND, PALM -> arm.knuckle().plus(arm.palmward().times(-.016));
            case FINGERS ->
                arm.knuckle().toward(arm.tip(), .6).plus(arm.palmward().times(.012));
            case WRIST -> arm.wrist();
            case ELBOW, FOREARM -> arm.elbow();
            case SHOULDER -> body.thorax.from(arm.shoulder(), 0, .010, m * .026);
            case BUTTOCKS, PELVIS, BACK -> body.pelvis.from(body.hip, -.062, .02, 0);
            case UPPER_BACK -> body.thorax.from(body.chest, -.06, .05, 0);
            case BELLY -> body.lumbar.from(body.waist, .062 + .031 * body.pose.get(Axis.BREATH), 0, 0);
            case CHEST -> body.thorax.from(body.chest, .062, .05, 0);
            case HEAD, FACE, TEMPLE -> body.head;
        };
    }
}
