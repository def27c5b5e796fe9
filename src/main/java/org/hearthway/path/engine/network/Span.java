package org.hearthway.path.engine.network;

import java.time.LocalDate;

/** From a first to a last day, both included. */
public record Span(LocalDate first, LocalDate last) {

    public Span {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("the last day comes before the first");
        }
    }

    /** The smallest span that holds both. */
    Span and(Span other) {
        return new Span(
                first.isBefore(other.first) ? first : other.first, last.isAfter(other.last) ? last : other.last);
    }

    /** Whether a day lies within. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }

    /** Whether the other lies within this one. */
    boolean holds(Span other) {
        return !other.first.isBefore(first) && !other.last.isAfter(last);
    }
}
