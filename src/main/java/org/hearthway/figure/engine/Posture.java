package org.hearthway.figure.engine;

/** How the body lies in the room before any joint moves. */
public enum Posture {
    STANDING(Frame.UPRIGHT, 0.54),
    SITTING(Frame.UPRIGHT, 0.26),
    LONG_SITTING(Frame.UPRIGHT, 0.06),
    KNEELING(Frame.UPRIGHT, 0.26),
    HALF_KNEELING(Frame.UPRIGHT, 0.27),
    SUPINE(Frame.UPRIGHT.sag(-90), 0.06),
    PRONE(Frame.UPRIGHT.sag(90), 0.06),
    QUADRUPED(Frame.UPRIGHT.sag(78), 0.27),
    SIDE_LYING_L(new Frame(new Vec(0, 0, 1), new Vec(1, 0, 0), new Vec(0, 1, 0)), 0.1),
    SIDE_LYING_R(new Frame(new Vec(0, 0, 1), new Vec(-1, 0, 0), new Vec(0, -1, 0)), 0.1);

    final Frame frame;
    final double height;

    Posture(Frame frame, double height) {
        this.frame = frame;
        this.height = height;
    }
}
