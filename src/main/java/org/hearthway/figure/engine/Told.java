package org.hearthway.figure.engine;

import java.util.List;
import java.util.Optional;

/**
 * What a picture shows, to be said in words. How long and how often is the dose, which the page says.
 *
 * @param ends the posture at the end, when it is another one
 * @param changes at most three, the largest first
 */
public record Told(
        Posture posture, List<Support.Kind> supports, Optional<Posture> ends, List<Change> changes, boolean helped) {

    public Told {
        supports = List.copyOf(supports);
        changes = List.copyOf(changes);
    }

    /** Whose movement it is. */
    public enum Who {
        RIGHT,
        LEFT,
        BOTH,
        WHOLE
    }

    /**
     * What moves and which way.
     *
     * @param more up, out, forward, bent, to the right; else the other way
     */
    public record Change(Movement movement, boolean more, Who who) {}

    /** A movement that is worth a word when it is larger than so many degrees, or so much of a breath. */
    public enum Movement {
        ROLL(45),
        PIVOT(45),
        HIPS(14),
        TRUNK(14),
        SIDE(8),
        HIP(12),
        HIP_ABD(10),
        HIP_ROT(15),
        KNEE(15),
        ANKLE(10),
        SHOULDER(20),
        SHOULDER_ABD(20),
        ELBOW(25),
        WRIST(20),
        PALM(40),
        FINGERS(40),
        TWIST(15),
        CURL(14),
        NECK(30),
        NECK_SIDE(15),
        NECK_TURN(40),
        /** In shares of a deep breath. */
        BREATH(.4),
        /** Of the weight, in body heights. */
        SHIFT(.01),
        /** Of the whole body, in body heights. */
        AHEAD(.04);

        final double from;

        Movement(double from) {
            this.from = from;
        }
    }
}
