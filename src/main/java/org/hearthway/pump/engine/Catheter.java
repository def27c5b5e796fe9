package org.hearthway.pump.engine;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * The catheter of a pump.
 *
 * @param implanted length that was left in the body after trimming; empty when nobody wrote it down
 * @param bore what it holds by its length
 */
public record Catheter(Optional<Length> implanted, Optional<VolumePerLength> bore) {

    /** Figures that a result may wait for. */
    public enum Figure {
        /** The implanted length. */
        IMPLANTED_LENGTH,
        /** Volume by length. */
        VOLUME_PER_LENGTH
    }

    /** A catheter of which both are known. */
    public static Catheter of(Length implanted, VolumePerLength bore) {
        return new Catheter(Optional.of(implanted), Optional.of(bore));
    }

    /** What is not known of it. */
    public Set<Figure> missing() {
        var missing = EnumSet.noneOf(Figure.class);
        if (implanted.isEmpty()) {
            missing.add(Figure.IMPLANTED_LENGTH);
        }
        if (bore.isEmpty()) {
            missing.add(Figure.VOLUME_PER_LENGTH);
        }
        return missing;
    }

    /** What it holds; empty when a figure is missing. */
    public Optional<Volume> volume() {
        return implanted.flatMap(length -> bore.map(length::times));
    }
}
