package org.hearthway.reminder.internal;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.hearthway.access.Account;
import org.hearthway.base.NotAvailable;
import org.hearthway.child.Standings;
import org.hearthway.reminder.Outbox.State;
import org.hearthway.reminder.events.MessageSettled;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Carries due messages out. Every step is written down before the next: claimed with a lease, being sent, settled. A
 * stop between two steps loses nothing; only what was being sent at that moment may go a second time, under the same
 * Message-ID, and says so.
 */
@Component
class Delivery {

    static final int BATCH = 20;
    static final Duration LEASE = Duration.ofMinutes(2);

    private static final Logger LOG = LoggerFactory.getLogger(Delivery.class);

    private final DeliveryQueue queue;
    private final MailComposer composer;
    private final Postman postman;
    private final Family family;
    private final Standings standings;
    private final SendingRules sending;
    private final TransactionTemplate inTransaction;
    private final ApplicationEventPublisher events;
    private final Clock clock;
    private final String worker = UUID.randomUUID().toString();
    private volatile boolean stopping;

    Delivery(
            DeliveryQueue queue,
            MailComposer composer,
            Postman postman,
            Family family,
            Standings standings,
            SendingRules sending,
            TransactionTemplate inTransaction,
            ApplicationEventPublisher events,
            Clock clock) {
        this.queue = queue;
        this.composer = composer;
        this.postman = postman;
        this.family = family;
        this.standings = standings;
        this.sending = sending;
        this.inTransaction = inTransaction;
        this.events = events;
        this.clock = clock;
    }

    /** Takes back what an earlier process was sending when it stopped; for a program that has its database to itself. */
    void takeBackAll() {
        var count = inTransaction.execute(status -> queue.takeBackAll());
        if (count != null && count > 0) {
            LOG.warn("{} message(s) were being sent when the program stopped; they go again as doubtful", count);
        }
    }

    /** One round: calls become due, due mails are claimed and sent. Returns how many mails were claimed. */
    int round() {
        var now = clock.instant();
        var claimed = inTransaction.execute(status -> {
            queue.takeBack(now);
            queue.callsDue(now);
            return queue.claim(worker, now, now.plus(LEASE), BATCH);
        });
        if (claimed == null) {
            return 0;
        }
        for (var row : claimed) {
            if (stopping) {
                later(row, row.draft().due(), row.state(), row.reason(), row.doubtful());
            } else {
                carry(row);
            }
        }
        return claimed.size();
    }

    /** The program stops: finish the message in hand and begin no other. */
    @EventListener(ContextClosedEvent.class)
    void stop() {
        stopping = true;
    }

    private void carry(OutboxRow row) {
        var now = clock.instant();
        var draft = row.draft();
        if (!row.byHand() && draft.usefulUntil().filter(now::isAfter).isPresent()) {
            settle(row, State.NOT_REACHED, row.reason().isEmpty() ? "too-late" : row.reason());
            return;
        }
        var hours = sending.plan().hours();
        if (!row.byHand() && !row.toTeam() && !hours.allow(now, draft.zone())) {
            later(row, hours.onOrAfter(now, draft.zone()), row.state(), row.reason(), row.doubtful());
            return;
        }
        var address = family.find(draft.person()).map(Account::email);
        if (address.isEmpty()) {
            settle(row, State.NOT_REACHED, "no-address");
            return;
        }
        MimeMessage message;
        try {
            message = composer.compose(row, address.get(), now);
        } catch (MessagingException notAnAddress) {
            settle(row, State.NOT_REACHED, "address-refused");
            return;
        }
        if (Boolean.TRUE.equals(inTransaction.execute(status -> queue.begin(row.id(), worker, clock.instant())))) {
            try {
                handOver(row, message);
            } catch (NotAvailable foldedMeanwhile) {
                // the entry goes on as another one, and the message with it
                later(row, row.draft().due(), row.state(), row.reason(), row.doubtful());
            }
        }
    }

    /**
     * Hands the message to the mail server while the child's status stands still: once a status that asks nothing of
     * the family is committed, nothing leaves any more.
     */
    private void handOver(OutboxRow row, MimeMessage message) {
        inTransaction.executeWithoutResult(status -> {
            var child = standings.hold(Family.MACHINE, row.draft().child());
            if (row.toTeam() ? child.isWatched() : child.asksTheFamily()) {
                deliver(row, message);
            } else {
                later(row, row.draft().due(), row.state(), row.reason(), row.doubtful());
            }
        });
    }

    private void deliver(OutboxRow row, MimeMessage message) {
        try {
            postman.deliver(message);
            var sent = row.doubtful() ? State.MAY_HAVE_GONE_TWICE : State.SENT;
            settle(row, postman.sends() ? sent : State.WRITTEN_TO_FOLDER, "");
        } catch (Postman.NotTaken failed) {
            LOG.warn("message {} was not taken: {}", row.id(), failed.reason());
            if (failed.isForGood()) {
                settle(row, State.NOT_REACHED, failed.reason());
            } else {
                tryAgain(row, failed);
            }
        }
    }

    private void tryAgain(OutboxRow row, Postman.NotTaken failed) {
        var draft = row.draft();
        var wait = sending.backOff().after(row.tries() + 1, row.id().getMostSignificantBits());
        var soonest = clock.instant().plus(wait);
        var next = row.toTeam() ? soonest : sending.plan().hours().onOrAfter(soonest, draft.zone());
        if (draft.usefulUntil().filter(next::isAfter).isPresent()) {
            settle(row, State.NOT_REACHED, failed.reason());
        } else {
            later(row, next, State.RETRYING, failed.reason(), row.doubtful() || failed.isDoubtful());
        }
    }

    private void later(OutboxRow row, Instant due, State state, String reason, boolean doubtful) {
        inTransaction.executeWithoutResult(status -> queue.later(row.id(), worker, due, state, reason, doubtful));
    }

    private void settle(OutboxRow row, State state, String reason) {
        inTransaction.executeWithoutResult(status -> {
            var now = clock.instant();
            if (queue.settle(row.id(), worker, state, reason, now)) {
                events.publishEvent(
                        new MessageSettled(row.draft().child(), Family.MACHINE, now, row.id(), state.name()));
            }
        });
    }
}
