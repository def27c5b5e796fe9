package org.hearthway.pump.ui;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpBook.Line;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Check;
import org.hearthway.pump.PumpOutlook;
import org.hearthway.pump.Pumps;
import org.springframework.stereotype.Component;

/** Reads all that the pages of a pump tell. */
@Component
class PumpReader {

    private final PumpBook book;
    private final Pumps pumps;
    private final Accounts accounts;
    private final Gate gate;
    private final ClinicCalendar calendar;
    private final ClinicSettings clinic;
    private final Clock clock;

    PumpReader(
            PumpBook book,
            Pumps pumps,
            Accounts accounts,
            Gate gate,
            ClinicCalendar calendar,
            ClinicSettings clinic,
            Clock clock) {
        this.book = book;
        this.pumps = pumps;
        this.accounts = accounts;
        this.gate = gate;
        this.calendar = calendar;
        this.clinic = clinic;
        this.clock = clock;
    }

    /** As things stand, for a person who may see the folder. */
    PumpReading read(Viewer viewer, ChildId child) {
        var outlook = book.outlook(viewer, child);
        var history = book.history(viewer, child);
        // what is shown of the time is reckoned with, so that it can be reckoned again
        var now = clock.instant().truncatedTo(ChronoUnit.MINUTES);
        return new PumpReading(
                child,
                outlook,
                history,
                pumps.refill(viewer, child),
                pumps.unfilledSince(viewer, child),
                pumps.takenOutOn(viewer, child),
                pumps.concerns(viewer, child),
                book.rules(),
                calendar::isOpen,
                accounts.byId(viewer, people(outlook, history)),
                gate.allows(viewer, Action.RECORD_PUMP, child),
                now,
                LocalDate.ofInstant(now, clinic.zone()));
    }

    private static Set<AccountId> people(PumpOutlook outlook, List<Line> history) {
        var people = new HashSet<AccountId>();
        for (var line : history) {
            people.add(line.by());
            line.entry().flatMap(PumpEntry::check).map(Check::by).ifPresent(people::add);
        }
        outlook.explained().map(PumpOutlook.Explanation::by).ifPresent(people::add);
        return people;
    }
}
