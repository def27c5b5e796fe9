package org.hearthway.pump.engine;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A refill.
 *
 * @param at when it was done
 * @param volume what is in the reservoir afterwards
 * @param beyondUse last day on which the drug of this fill may be used, if the pharmacy gave one
 */
public record Filling(Instant at, Volume volume, Optional<LocalDate> beyondUse) {

    /** A fill that is good as long as the label says. */
    public static Filling of(Instant at, Volume volume) {
        return new Filling(at, volume, Optional.empty());
    }

    /** The same with a last day of its own. */
    public Filling usableUntil(LocalDate day) {
        return new Filling(at, volume, Optional.of(day));
    }
}
