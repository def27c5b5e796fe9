package org.hearthway.stimulator.engine;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * How often a generator is to be charged at home, and what is known of it.
 *
 * @param everyDays the clinic's or the device's rhythm, in days
 * @param last the last charge that somebody told of
 */
public record Recharging(int everyDays, Optional<LocalDate> last) {

    /** The day by which the next charge is due; empty while none is known. */
    public Optional<LocalDate> next() {
        return last.map(day -> day.plusDays(everyDays));
    }

    /** How many days late the charge was on a day on which somebody looked; 0 when it was not, or when none is known. */
    public long lateOn(LocalDate day) {
        return next().map(due -> Math.max(0, ChronoUnit.DAYS.between(due, day))).orElse(0L);
    }
}
