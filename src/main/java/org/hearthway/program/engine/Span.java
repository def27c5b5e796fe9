package org.hearthway.program.engine;

import java.util.Optional;

/**
 * A range of whole numbers, both ends included.
 *
 * @param least not above the most
 * @param most not below the least
 */
public record Span(int least, int most) {

    private static final int DIGITS = 4;

    public Span {
        if (least > most) {
            throw new IllegalArgumentException("from the least to the most");
        }
    }

    /** Whether the number lies within. */
    public boolean holds(int number) {
        return number >= least && number <= most;
    }

    /** The number of the range that is nearest. */
    public int nearest(int number) {
        return Math.max(least, Math.min(most, number));
    }

    /** A range as files write it, "2-5", or one number, "3"; empty when it is neither. */
    public static Optional<Span> parse(String text) {
        var ends = text.strip().split("-", 2);
        for (var end : ends) {
            if (!end.matches("\\d{1," + DIGITS + "}")) {
                return Optional.empty();
            }
        }
        int least = Integer.parseInt(ends[0]);
        int most = Integer.parseInt(ends[ends.length - 1]);
        return least > most ? Optional.empty() : Optional.of(new Span(least, most));
    }

    /** As files write it. */
    @Override
    public String toString() {
        return least == most ? String.valueOf(least) : least + "-" + most;
    }
}
