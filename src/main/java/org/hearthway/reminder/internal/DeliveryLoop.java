package org.hearthway.reminder.internal;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** Turns the delivery once a second. */
@Component
@ConditionalOnProperty(name = "hearthway.outbox.loop", matchIfMissing = true)
class DeliveryLoop {

    private static final Logger LOG = LoggerFactory.getLogger(DeliveryLoop.class);

    private final Delivery delivery;
    private boolean alone;

    /**
     * Makes the loop.
     *
     * @param alone whether this program has its database to itself, so that whatever is being sent when it starts was
     *     left by an earlier process; where several share one, a lease must run out first
     */
    DeliveryLoop(Delivery delivery, @Value("${hearthway.outbox.alone:true}") boolean alone) {
        this.delivery = delivery;
        this.alone = alone;
    }

    @Scheduled(fixedDelayString = "${hearthway.outbox.pause:1s}")
    void turn() {
        try {
            if (alone) {
                delivery.takeBackAll();
                alone = false;
            }
            delivery.round();
        } catch (RuntimeException e) {
            // its text may carry addresses; the next turn tries again
            LOG.error("a round of the outbox failed: {}", e.getClass().getName());
        }
    }
}
