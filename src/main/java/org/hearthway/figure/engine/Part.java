package org.hearthway.figure.engine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What of the body can touch something. */
public enum Part {
    FOOT("foot", "feet", true),
    TOES("toes", "toes", true),
    HEEL("heel", "heels", true),
    INSTEP("instep", "insteps", true),
    ANKLE("ankle", "ankles", true),
    CALF("calf", "calves", true),
    KNEE("knee", "knees", true),
    SHIN("shin", "shins", true),
    THIGH("thigh", "thighs", true),
    HIP("hip", "hips", true),
    HAND("hand", "hands", true),
    PALM("palm", "palms", true),
    FINGERS("fingers", "fingers", true),
    WRIST("wrist", "wrists", true),
    ELBOW("elbow", "elbows", true),
    FOREARM("forearm", "forearms", true),
    SHOULDER("shoulder", "shoulders", true),
    BUTTOCKS("buttocks", "buttocks", false),
    BACK("back", "back", false),
    UPPER_BACK("upper back", "upper back", false),
    PELVIS("pelvis", "pelvis", false),
    BELLY("belly", "belly", false),
    CHEST("chest", "chest", false),
    HEAD("head", "head", false),
    FACE("face", "face", false),
    TEMPLE("temple", "temple", false);

    private final String one;
    private final String both;
    private final boolean sided;

    Part(String one, String both, boolean sided) {
        this.one = one;
        this.both = both;
        this.sided = sided;
    }

    static Optional<Part> of(String word) {
        return Arrays.stream(values())
                .filter(p -> p.one.equals(word) || p.both.equals(word))
                .findFirst();
    }

    boolean isSided() {
        return sided;
    }

    boolean isOfArm() {
        return switch (this) {
            case HAND, PALM, FINGERS, WRIST, ELBOW, FOREARM -> true;
            default -> false;
        };
    }

    /** What of it touches, as ellipsoids; for parts without a side the side is not looked at. */
    List<Lump> lumps(Body body, Side side) {
        var flesh = new Flesh(body);
        var leg = body.leg(side);
        var arm = body.arm(side);
        return switch (this) {
            case FOOT -> List.of(Lump.ball(leg.heel(), .0195), Lump.ball(leg.ball(), .0145));
            case TOES -> List.of(Lump.ball(leg.ball(), .0145), Lump.ball(leg.toe(), .011));
            case HEEL -> List.of(Lump.ball(leg.heel(), .0195));
            case INSTEP -> List.of(Lump.ball(leg.instep(), .020));
            case ANKLE -> List.of(flesh.ball(leg.ankle(), Flesh.ANKLE));
            case CALF -> List.of(flesh.ball(leg.calf(), Flesh.CALF));
            case KNEE -> List.of(flesh.ball(leg.kneecap(), .034));
            case SHIN -> List.of(flesh.ball(leg.kneecap(), .034), Lump.ball(leg.ball(), .0145));
            case THIGH -> List.of(flesh.ball(leg.hip().toward(leg.knee(), .45), .047));
            case HIP -> List.of(flesh.ball(leg.hip(), .042));
            case HAND, PALM -> List.of(Lump.ball(arm.palm(), .012));
            case FINGERS -> List.of(Lump.ball(arm.tip(), .010));
            case WRIST -> List.of(Lump.ball(arm.wrist(), .0155));
            case ELBOW -> List.of(flesh.ball(arm.elbow(), Flesh.ELBOW));
            case FOREARM -> List.of(flesh.ball(arm.elbow(), Flesh.ELBOW), Lump.ball(arm.wrist(), .0155));
            case SHOULDER -> List.of(flesh.shoulder(side));
            case BUTTOCKS -> List.of(Lump.ball(body.pelvis.from(body.hip, -.008, 0, 0), .058));
            case BACK -> List.of(flesh.hips(), flesh.breast());
            case UPPER_BACK, CHEST -> List.of(flesh.breast());
            case PELVIS, BELLY -> List.of(flesh.hips());
            case HEAD, FACE, TEMPLE -> List.of(flesh.skull());
        };
    }
}
