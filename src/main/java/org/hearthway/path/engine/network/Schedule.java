package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A day for every point.
 *
 * @param placed by point, in the order of the network
 */
public record Schedule(Map<String, Placed> placed) {

    public Schedule {
        placed = Collections.unmodifiableMap(new LinkedHashMap<>(placed));
    }

    /** The day of a point. @throws IllegalArgumentException when there is no such point */
    public LocalDate day(String point) {
        return of(point).day();
    }

    /** All about a point. @throws IllegalArgumentException when there is no such point */
    public Placed of(String point) {
        var found = placed.get(point);
        if (found == null) {
            throw new IllegalArgumentException("no point " + point + " in the schedule");
        }
        return found;
    }

    /**
     * A point's day and where it comes from.
     *
     * @param day the day chosen
     * @param span the earliest and the latest day in any schedule
     * @param wanted the day aimed at; empty without an aim
     * @param pushed the rule that kept the point from the day aimed at; empty when it lies there, or when the day aimed
     *     at is one on which it may not lie
     */
    public record Placed(LocalDate day, Span span, Optional<LocalDate> wanted, Optional<String> pushed) {}
}
