package org.hearthway.figure.engine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A movement of trunk and neck, in degrees, how full the belly is of air, or a place of the whole body. Ranges of trunk and neck are from memory of
 * the usual clinical values; those of the whole body only keep slips of the pen out.
 */
public enum Axis {
    TRUNK("trunk", -30, 75),
    TRUNK_SIDE("trunk_side", -40, 40),
    TRUNK_TURN("trunk_turn", -45, 45),
    NECK("neck", -60, 60),
    NECK_SIDE("neck_side", -45, 45),
    NECK_TURN("neck_turn", -80, 80),
    /** How full of air the belly is: 0 as at rest, 1 drawn in deep; a design value and no measure of a lung. */
    BREATH("breath", 0, 1),
    TILT("root tilt", -120, 120),
    TURN("root turn", -180, 180),
    LEAN("root lean", -90, 90),
    X("root x", -2, 2),
    Y("root y", -2, 2),
    Z("root z", -2, 2);

    private static final List<Axis> ALL = List.of(values());

    private final String key;
    private final double min;
    private final double max;

    Axis(String key, double min, double max) {
        this.key = key;
        this.min = min;
        this.max = max;
    }

    /** As pose files write it; the last word for the whole body. */
    public String key() {
        return key;
    }

    /** The least value that is drawn: degrees, or body heights for a place. */
    public double min() {
        return min;
    }

    /** The greatest value that is drawn: degrees, or body heights for a place. */
    public double max() {
        return max;
    }

    /** Where it stands among all of its kind, from 0. */
    int place() {
        return ALL.indexOf(this);
    }

    boolean isPlace() {
        return this == X || this == Y || this == Z;
    }

    /** The axis that a pose file names. */
    public static Optional<Axis> of(String key) {
        return Arrays.stream(values()).filter(a -> a.key.equals(key)).findFirst();
    }
}
