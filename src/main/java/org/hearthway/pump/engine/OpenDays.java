package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;

/** Moves a day to one on which the clinic is open: earlier, never later. */
final class OpenDays {

    private OpenDays() {}

    /** The last open day that is not later than one day and not earlier than another; empty when there is none. */
    static Optional<LocalDate> earlier(LocalDate day, LocalDate first, Predicate<LocalDate> open) {
        for (var candidate = day; !candidate.isBefore(first); candidate = candidate.minusDays(1)) {
            if (open.test(candidate)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }
}
