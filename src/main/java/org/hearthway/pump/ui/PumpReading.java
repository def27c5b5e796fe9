package org.hearthway.pump.ui;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpOutlook;
import org.hearthway.pump.Pumps.Concern;
import org.hearthway.pump.Refill;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Program;

/**
 * All that the page of a pump tells, read at one moment.
 *
 * @param history all entries, the last entered first
 * @param refill what may be told of the next one
 * @param unfilledSince since when a pump is in with no refill recorded
 * @param takenOutOn when the last pump came out
 * @param concerns what somebody has to look into
 * @param open days on which the clinic is open
 * @param people who entered and who checked
 * @param mayRecord whether the person who looks may record
 */
record PumpReading(
        ChildId child,
        PumpOutlook outlook,
        List<PumpBook.Line> history,
        Optional<Refill> refill,
        Optional<LocalDate> unfilledSince,
        Optional<LocalDate> takenOutOn,
        List<Concern> concerns,
        ClinicRules rules,
        Predicate<LocalDate> open,
        Map<AccountId, Account> people,
        boolean mayRecord,
        Instant now,
        LocalDate today) {

    /** The name of a person; nothing when the account is gone. */
    String name(AccountId account) {
        return Optional.ofNullable(people.get(account)).map(Account::name).orElse("");
    }

    /** The refill that waits for its second check, when it would be the last one. */
    Optional<PumpBook.Line> refillInCheck() {
        return refill.filter(Refill::beingChecked).flatMap(told -> waiting(true));
    }

    /** A change of dose that waits for its second check, the last entered. */
    Optional<PumpBook.Line> changeInCheck() {
        return waiting(false);
    }

    private Optional<PumpBook.Line> waiting(boolean refills) {
        return history.stream()
                .filter(PumpBook.Line::waits)
                .filter(line -> line.kind() != PumpEntry.Kind.IMPLANT)
                .filter(line -> (line.kind() != PumpEntry.Kind.CHANGE) == refills)
                .findFirst();
    }

    /** What runs now, as far as it was checked. */
    Optional<Program> program() {
        return outlook.reservoir()
                .filter(reservoir -> !now.isBefore(reservoir.filling().at()))
                .map(reservoir -> reservoir.programAt(now));
    }

    /** What the pump gives in a day is nothing, because it was stopped. */
    boolean isStopped() {
        return outlook.setting()
                .map(PumpEntry.Setting::dosing)
                .filter(Dosing.Stopped.class::isInstance)
                .isPresent();
    }
}
