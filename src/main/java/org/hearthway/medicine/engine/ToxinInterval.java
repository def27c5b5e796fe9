package org.hearthway.medicine.engine;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/**
 * The clinic's least time between two toxin sessions.
 *
 * @param days 1 to {@value #MOST}
 */
public record ToxinInterval(int days) {

    /** The longest that a clinic may set. */
    public static final int MOST = 730;

    /** @throws IllegalArgumentException outside its bounds */
    public ToxinInterval {
        if (days < 1 || days > MOST) {
            throw new IllegalArgumentException("an interval of " + days + " days");
        }
    }

    /** The first day for a session after one. */
    public LocalDate notBefore(LocalDate session) {
        return session.plusDays(days);
    }

    /** The first day for the next session after the latest of these; empty when there was none. */
    public Optional<LocalDate> notBefore(Collection<LocalDate> given) {
        return given.stream().max(Comparator.naturalOrder()).map(this::notBefore);
    }

    /** Of other sessions the one, on either side, that lies too near to a day; the nearest of several. */
    public Optional<LocalDate> tooNear(LocalDate day, Collection<LocalDate> others) {
        return others.stream()
                .filter(other -> distance(day, other) < days)
                .min(Comparator.comparingLong(other -> distance(day, other)));
    }

    private static long distance(LocalDate day, LocalDate other) {
        return Math.abs(ChronoUnit.DAYS.between(day, other));
    }
}
