package org.hearthway.pump.engine;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One point of a plot: what was delivered against what was planned, refill by refill.
 *
 * @param ratio 1 is as planned; empty when nothing was planned
 */
public record DeliveryRatio(Instant refill, Optional<Amount> ratio, boolean flagged) {

    /** The points of refills, oldest first. */
    public static List<DeliveryRatio> series(Map<Instant, Residual> refills) {
        return refills.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(refill -> new DeliveryRatio(
                        refill.getKey(),
                        refill.getValue().ratio(),
                        refill.getValue().flagged()))
                .toList();
    }
}
