package org.hearthway.path.engine.network;

import java.time.Period;
import java.util.Optional;

/**
 * Something that gets a day.
 *
 * @param id the caller's own name for it
 * @param aim the day that is wanted; without one the earliest day is taken
 */
public record Point(String id, Optional<Aim> aim) {

    /**
     * So long after another point.
     *
     * @param from a point that stands before this one in the network
     * @param usual the usual gap
     */
    public record Aim(String from, Period usual) {}
}
