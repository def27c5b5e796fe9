package org.hearthway.child.engine;

import java.time.LocalDate;

/**
 * How long a child was carried, in completed weeks and days.
 *
 * <p>The bounds catch slips of the keyboard: no child lives who was born before 20 weeks, and none is carried past 45
 * (common practice, no source).
 *
 * @param weeks completed weeks, 20 to 44
 * @param days days on top, 0 to 6
 */
public record Gestation(int weeks, int days) {

    public static final int FEWEST_WEEKS = 20;
    public static final int MOST_WEEKS = 44;

    private static final int TERM_DAYS = 40 * 7;
    private static final int PRETERM_WEEKS = 37;

    /**
     * Weeks and days.
     *
     * @throws IllegalArgumentException outside the bounds
     */
    public Gestation {
        if (!isPossible(weeks, days)) {
            throw new IllegalArgumentException("20 to 44 weeks and 0 to 6 days");
        }
    }

    /** Whether weeks and days lie within the bounds. */
    public static boolean isPossible(int weeks, int days) {
        return weeks >= FEWEST_WEEKS && weeks <= MOST_WEEKS && days >= 0 && days <= 6;
    }

    /** Born before 37 completed weeks (the World Health Organization's definition). */
    public boolean isPreterm() {
        return weeks < PRETERM_WEEKS;
    }

    /** The day on which 40 weeks would have been complete, for a child born on that day. */
    public LocalDate dueDay(LocalDate born) {
        return born.plusDays(TERM_DAYS - (weeks * 7L + days));
    }
}
