package org.hearthway.program.engine.trend;

import java.util.List;

/** Scores of pain, 0 to 10, as scales make them. Only the arithmetic: the words and faces of a scale belong to its makers. */
public final class PainScore {

    private static final int ITEMS = 5;
    private static final int MOST_OF_AN_ITEM = 2;
    private static final int FACES = 6;
    private static final int MOST = 10;

    private PainScore() {}

    /** How strong a pain is taken to be. */
    public enum Band {
        NONE,
        MILD,
        MODERATE,
        SEVERE
    }

    /**
     * Where the bands begin; forms differ (4 to 6 and 7 to 10, or 4 to 7 and 8 to 10), so each clinic says.
     *
     * @param moderate first score that is moderate, 2 to 9
     * @param severe first score that is severe, above that, at most 10
     */
    public record Bands(int moderate, int severe) {

        /** 1 to 3 mild, 4 to 6 moderate, 7 to 10 severe (Merkel and others 1997). */
        public static final Bands USUAL = new Bands(4, 7);

        public Bands {
            if (moderate < 2 || severe <= moderate || severe > MOST) {
                throw new IllegalArgumentException("2 to 10, one above the other");
            }
        }

        /** The band of a score, 0 to 10. */
        public Band of(int score) {
            if (score < 0 || score > MOST) {
                throw new IllegalArgumentException("0 to 10");
            }
            if (score == 0) {
                return Band.NONE;
            }
            return score >= severe ? Band.SEVERE : score >= moderate ? Band.MODERATE : Band.MILD;
        }
    }

    /**
     * The sum of five watched things, each 0 to 2, as somebody scores who watches a child that cannot say.
     *
     * @throws IllegalArgumentException when one is missing or out of its range: a part is no sum
     */
    public static int watched(List<Integer> items) {
        if (items.size() != ITEMS || items.stream().anyMatch(item -> item < 0 || item > MOST_OF_AN_ITEM)) {
            throw new IllegalArgumentException("five things, each 0 to 2");
        }
        return items.stream().mapToInt(Integer::intValue).sum();
    }

    /**
     * The score of the face that a child chose, of six.
     *
     * @param face its place, from 0 for no pain to 5
     */
    public static int face(int face) {
        if (face < 0 || face >= FACES) {
            throw new IllegalArgumentException("face 0 to 5");
        }
        return MOST_OF_AN_ITEM * face;
    }
}
