package org.hearthway.figure.engine;

/**
 * How the drawn child looks; not tied to any child's data.
 *
 * @param tone of the skin, 1 light to 4 dark
 * @param splints sides that wear an ankle splint
 * @param shoes whether the child wears shoes
 */
public record Look(Hair hair, int tone, java.util.Set<Side> splints, boolean shoes) {

    /** The usual look. */
    public static final Look USUAL = new Look(Hair.SHORT, 2, java.util.Set.of(), false);

    public Look {
        splints = java.util.Set.copyOf(splints);
    }

    /** How the hair is worn. */
    public enum Hair {
        SHORT,
        TAIL,
        CURLS
    }
}
