package org.hearthway.equipment;

/** Where on the body something is worn. */
public enum Place {
    FOOT_ANKLE,
    KNEE,
    WHOLE_LEG,
    HIPS,
    TRUNK,
    HAND_WRIST,
    ELBOW,
    NECK;

    /** Which side of the body. */
    public enum Side {
        LEFT,
        RIGHT,
        BOTH
    }
}
