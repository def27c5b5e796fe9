package org.hearthway.reminder.internal;

import java.time.Clock;
import java.time.LocalDate;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.Pumps;
import org.hearthway.task.Tasks;
import org.hearthway.visit.Visits;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Derives all reminders anew, at the start and every hour: what a changed rule, a changed language or a lost row left
 * out of step is put right. Where everything agrees it changes nothing.
 */
@Component
@ConditionalOnProperty(name = "hearthway.outbox.loop", matchIfMissing = true)
class SweepLoop {

    private static final Logger LOG = LoggerFactory.getLogger(SweepLoop.class);
    private static final int YEARS_AHEAD = 6;

    private final Planning planning;
    private final Visits visits;
    private final Pumps pumps;
    private final Tasks tasks;
    private final ClinicSettings clinic;
    private final TransactionTemplate inTransaction;
    private final Clock clock;

    SweepLoop(
            Planning planning,
            Visits visits,
            Pumps pumps,
            Tasks tasks,
            ClinicSettings clinic,
            TransactionTemplate inTransaction,
            Clock clock) {
        this.planning = planning;
        this.visits = visits;
        this.pumps = pumps;
        this.tasks = tasks;
        this.clinic = clinic;
        this.inTransaction = inTransaction;
        this.clock = clock;
    }

    @Scheduled(initialDelayString = "5s", fixedDelayString = "1h")
    void sweep() {
        var today = LocalDate.ofInstant(clock.instant(), clinic.zone());
        for (var visit : visits.between(Family.MACHINE, today, today.plusYears(YEARS_AHEAD))) {
            alone(() -> planning.visit(visit.id()));
        }
        for (var child : pumps.refills(Family.MACHINE).keySet()) {
            alone(() -> planning.refill(child));
        }
        for (var child : tasks.withFamilyTasks(Family.MACHINE)) {
            alone(() -> planning.tasks(child));
        }
    }

    /** Each in a transaction of its own: one that somebody else is changing right now is left for the next time. */
    private void alone(Runnable work) {
        try {
            inTransaction.executeWithoutResult(status -> work.run());
        } catch (RuntimeException e) {
            LOG.warn(
                    "reminders of one cause were left for the next time: {}",
                    e.getClass().getName());
        }
    }
}
