package org.hearthway.pump.engine;

import java.time.LocalDate;

/**
 * The last day for a refill, with what it was made of.
 *
 * @param filled the day of the last fill
 * @param alarm the low-reservoir alarm date from the device print-out
 * @param marginDays days that the clinic keeps before the alarm
 * @param lifeLimitDays longest time the drug may stay in the reservoir
 * @param byAlarm alarm less margin
 * @param byLife fill plus life limit
 * @param day the earlier of the two
 */
public record RefillBy(
        LocalDate filled,
        LocalDate alarm,
        int marginDays,
        int lifeLimitDays,
        LocalDate byAlarm,
        LocalDate byLife,
        LocalDate day) {

    /**
     * Computes it.
     *
     * @param marginDays 3 to 14 (reference practice: 5)
     * @param lifeLimitDays 1 to 180; the product label decides
     * @throws IllegalArgumentException when a bound is broken or the alarm does not lie after the fill
     */
    public static RefillBy of(LocalDate filled, LocalDate alarm, int marginDays, int lifeLimitDays) {
        if (marginDays < 3 || marginDays > 14) {
            throw new IllegalArgumentException("margin days " + marginDays + " outside 3 to 14");
        }
        if (lifeLimitDays < 1 || lifeLimitDays > 180) {
            throw new IllegalArgumentException("life limit days " + lifeLimitDays + " outside 1 to 180");
        }
        if (!alarm.isAfter(filled)) {
            throw new IllegalArgumentException("alarm date not after the fill");
        }
        var byAlarm = alarm.minusDays(marginDays);
        var byLife = filled.plusDays(lifeLimitDays);
        var day = byAlarm.isBefore(byLife) ? byAlarm : byLife;
        return new RefillBy(filled, alarm, marginDays, lifeLimitDays, byAlarm, byLife, day);
    }

    /** Whether the drug's life in the reservoir, not the alarm, sets the day. */
    public boolean lifeDecides() {
        return byLife.isBefore(byAlarm);
    }
}
