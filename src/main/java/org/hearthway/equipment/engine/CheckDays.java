package org.hearthway.equipment.engine;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * When a thing is looked at again.
 *
 * @param given the day the child got it
 * @param everyDays days from one look to the next, at least 1
 */
public record CheckDays(LocalDate given, int everyDays) {

    public CheckDays {
        if (everyDays < 1) {
            throw new IllegalArgumentException("every " + everyDays + " days is below 1");
        }
    }

    /**
     * A look that took place.
     *
     * @param day when
     * @param next the day named then for the next one
     */
    public record Look(LocalDate day, Optional<LocalDate> next) {}

    /** The day of the next look: what was named at the last one, else so many days after it. */
    public LocalDate next(List<Look> looks) {
        return looks.stream()
                .max(Comparator.comparing(Look::day))
                .map(last -> last.next().orElseGet(() -> last.day().plusDays(everyDays)))
                .orElseGet(() -> given.plusDays(everyDays));
    }
}
