package org.hearthway.caseload.internal;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Turns the escalation every few seconds: minutes pass without an event. */
@Component
class EscalationLoop {

    private static final Logger LOG = LoggerFactory.getLogger(EscalationLoop.class);

    private final NeedItems items;
    private final Escalations escalations;
    private final TransactionTemplate transaction;

    EscalationLoop(NeedItems items, Escalations escalations, TransactionTemplate transaction) {
        this.items = items;
        this.escalations = escalations;
        this.transaction = transaction;
    }

    /** Looks at each child with a report that waits, each in a transaction of its own. */
    @Scheduled(
            initialDelayString = "${hearthway.on-call.first:PT6S}",
            fixedDelayString = "${hearthway.on-call.every:PT10S}")
    void turn() {
        items.childrenWaiting().forEach(child -> {
            try {
                transaction.executeWithoutResult(status -> escalations.advance(child));
            } catch (RuntimeException e) {
                // its text may carry an address; one child's trouble keeps nobody else waiting
                LOG.error(
                        "an escalation is left for the next turn ({})",
                        e.getClass().getName());
            }
        });
    }
}
