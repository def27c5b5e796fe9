package org.hearthway.child;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.AccountId;

/**
 * A child's status as somebody said it.
 *
 * @param number counts what was said of the child, from 1; 0 before anybody said anything
 * @param status the status
 * @param since when it was said
 * @param saidBy who said it; empty before anybody did
 * @param reason why
 * @param handover who took over, for a child that moved or grew up
 * @param confirmedBy the second person, for a death
 * @param undoes the number of what this took back, if it did
 */
public record Standing(
        long number,
        Status status,
        Instant since,
        Optional<AccountId> saidBy,
        String reason,
        Optional<Handover> handover,
        Optional<AccountId> confirmedBy,
        Optional<Long> undoes) {

    /** Whether a second person still has to confirm it. Everything stops already; the family is told nothing yet. */
    public boolean waitsForSecondPerson() {
        return status == Status.DIED && confirmedBy.isEmpty();
    }

    /**
     * Who took over the care.
     *
     * @param service the receiving service, 1 to 200 characters
     * @param deviceDate its first refill or programming date, asked for when a device is in place
     */
    public record Handover(String service, Optional<LocalDate> deviceDate) {}
}
