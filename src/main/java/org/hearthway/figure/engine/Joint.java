package org.hearthway.figure.engine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A movement of a limb with the range that can be drawn, in degrees.
 *
 * <p>The bounds are our design values around published norms, and say what can be drawn, never what to prescribe: hip
 * and knee flexion and extension and ankle dorsiflexion around the CDC Normal Joint Range of Motion Study (Soucie et
 * al., Haemophilia 2011;17:500-507; read in an indexed copy), the elbow, forearm and plantar flexion around the same
 * table from memory; shoulder, wrist and elbow around the AAOS values (read in a goniometry textbook's appendix);
 * abduction and rotation of the hip, toes from memory; fingers and thumb design values.
 */
public enum Joint {
    HIP("hip", -28, 140),
    HIP_ABD("hip_abd", -30, 55),
    HIP_ROT("hip_rot", -50, 60),
    KNEE("knee", -5, 152),
    ANKLE("ankle", -65, 28),
    TOES("toes", -40, 70),
    SHOULDER("shoulder", -60, 180),
    SHOULDER_ABD("shoulder_abd", -45, 180),
    SHOULDER_ROT("shoulder_rot", -90, 90),
    ELBOW("elbow", -7, 152),
    PRON("pron", -90, 90),
    WRIST("wrist", -80, 80),
    FINGERS("fingers", -20, 100),
    THUMB("thumb", 0, 80);

    private static final List<Joint> ALL = List.of(values());

    private final String key;
    private final double min;
    private final double max;

    Joint(String key, double min, double max) {
        this.key = key;
        this.min = min;
        this.max = max;
    }

    /** As pose files write it. */
    public String key() {
        return key;
    }

    /** The least angle that is drawn, degrees. */
    public double min() {
        return min;
    }

    /** The greatest angle that is drawn, degrees. */
    public double max() {
        return max;
    }

    /** Where it stands among all of its kind, from 0. */
    int place() {
        return ALL.indexOf(this);
    }

    /** The joint that a pose file names. */
    public static Optional<Joint> of(String key) {
        return Arrays.stream(values()).filter(j -> j.key.equals(key)).findFirst();
    }
}
