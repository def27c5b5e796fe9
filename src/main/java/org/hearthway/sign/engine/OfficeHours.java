package org.hearthway.sign.engine;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * When the office line is answered, as moments on every clock.
 *
 * @param opens first minute, on the clinic's clock
 * @param closes first minute after, on the clinic's clock
 * @param zone where the clinic's clock stands
 * @param openDay whether the clinic is open on a day
 */
public record OfficeHours(LocalTime opens, LocalTime closes, ZoneId zone, Predicate<LocalDate> openDay) {

    /** One stretch of office hours, half-open: {@code from} belongs to it, {@code until} does not. */
    public record Opening(Instant from, Instant until) {

        /** Whether the moment lies in it. */
        public boolean holds(Instant moment) {
            return !moment.isBefore(from) && moment.isBefore(until);
        }
    }

    /**
     * The openings that are not over at a moment, the first in time first; looks at the day of that moment and so many
     * days after it.
     */
    public List<Opening> from(Instant moment, int days) {
        var today = LocalDate.ofInstant(moment, zone);
        return today.datesUntil(today.plusDays(days + 1L))
                .filter(openDay)
                .map(day -> new Opening(
                        day.atTime(opens).atZone(zone).toInstant(),
                        day.atTime(closes).atZone(zone).toInstant()))
                .filter(opening -> opening.until().isAfter(moment))
                .collect(Collectors.toList());
    }
}
