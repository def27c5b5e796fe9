package org.hearthway.equipment.engine;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The days of a series of casts, as the clinician planned them.
 *
 * @param from first day of the series
 * @param everyDays days from one cast to the next, at least 1
 * @param lastOff day on which the last cast is to come off
 */
public record CastDays(LocalDate from, int everyDays, Optional<LocalDate> lastOff) {

    public CastDays {
        if (everyDays < 1) {
            throw new IllegalArgumentException("every " + everyDays + " days is below 1");
        }
    }

    /**
     * The next day on which something is done to the cast: counted from the cast that was put on last, never after the
     * day on which the last one comes off.
     *
     * @param putOn days on which casts were put on, in any order
     */
    public LocalDate next(List<LocalDate> putOn) {
        var planned = putOn.stream()
                .max(Comparator.naturalOrder())
                .map(last -> last.plusDays(everyDays))
                .orElse(from);
        return lastOff.filter(planned::isAfter).orElse(planned);
    }

    /** Whether that day is the one on which the last cast comes off. */
    public boolean isLast(LocalDate next) {
        return lastOff.filter(next::equals).isPresent();
    }
}
