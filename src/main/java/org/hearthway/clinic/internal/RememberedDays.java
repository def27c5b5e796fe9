package org.hearthway.clinic.internal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.hearthway.clinic.events.ClosedDaySaid;
import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Remembers the closed days, because a plan asks for thousands of days. What is said here counts at once; what another
 * instance of the program was told is noticed after a second.
 */
@Component
class RememberedDays implements OwnDays {

    private static final Duration HOLDS = Duration.ofSeconds(1);

    private final ClosedDayRows rows;
    private final Clock clock;
    private volatile @Nullable Remembered remembered;

    private record Remembered(Known known, Instant at) {}

    RememberedDays(ClosedDayRows rows, Clock clock) {
        this.rows = rows;
        this.clock = clock;
    }

    @Override
    public Known known() {
        var now = clock.instant();
        var last = remembered;
        if (last != null && Duration.between(last.at(), now).abs().compareTo(HOLDS) < 0) {
            return last.known();
        }
        var known = last != null && last.known().edition() == rows.edition() ? last.known() : rows.known();
        remembered = new Remembered(known, now);
        return known;
    }

    /** Forgets once more when it is committed or taken back: somebody may have asked in between. */
    @EventListener
    void on(ClosedDaySaid said) {
        remembered = null;
        if (TransactionSynchronizationManager.isSynchronizationActive()) {
            TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
                @Override
                public void afterCompletion(int status) {
                    remembered = null;
                }
            });
        }
    }
}
