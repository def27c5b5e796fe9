package org.hearthway.figure.engine;

/** How the body lies in the room before any joint moves. */
public enum Posture {
    STANDING(0.54),
    SITTING(0.26),
    LONG_SITTING(0.06),
    KNEELING(0.26),
    HALF_KNEELING(0.27),
    SUPINE(0.06),
    PRONE(0.06),
    QUADRUPED(0.27),
    SIDE_LYING_L(0.1),
    SIDE_LYING_R(0.1);

    /** Of the hips, near enough for the contacts to begin from, in body heights. */
    final double height;

    Posture(double height) {
        this.height = height;
    }

    Frame frame() {
        return switch (this) {
            case STANDING, SITTING, LONG_SITTING, KNEELING, HALF_KNEELING -> Frame.UPRIGHT;
            case SUPINE -> Frame.UPRIGHT.sag(-90);
            case PRONE -> Frame.UPRIGHT.sag(90);
            case QUADRUPED -> Frame.UPRIGHT.sag(78);
            case SIDE_LYING_L -> new Frame(new Vec(0, 0, 1), new Vec(1, 0, 0), new Vec(0, 1, 0));
            case SIDE_LYING_R -> new Frame(new Vec(0, 0, 1), new Vec(-1, 0, 0), new Vec(0, -1, 0));
        };
    }
}
