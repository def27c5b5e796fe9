package org.hearthway.caseload.internal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.OnCall;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Cause;
import org.hearthway.caseload.engine.Escalation;
import org.hearthway.caseload.engine.Escalation.Turn;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.caseload.events.NeedWorked;
import org.hearthway.child.Standings;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.reminder.StaffMail;
import org.hearthway.sign.engine.OfficeHours;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Hands an urgent report that nobody takes up from one person on call to the next. It stops in the transaction in which
 * somebody takes it up or reads it, and stands still while nobody watches the child.
 */
@Component
@Transactional
class Escalations {

    private static final Viewer.Machine MACHINE = new Viewer.Machine("on call");
    private static final String TEXT = "on-call";

    private final NeedItems items;
    private final NeedTurns turns;
    private final OnCall onCall;
    private final StaffMail mail;
    private final Standings standings;
    private final ClinicSettings clinic;
    private final ClinicCalendar calendar;
    private final Clock clock;

    Escalations(
            NeedItems items,
            NeedTurns turns,
            OnCall onCall,
            StaffMail mail,
            Standings standings,
            ClinicSettings clinic,
            ClinicCalendar calendar,
            Clock clock) {
        this.items = items;
        this.turns = turns;
        this.onCall = onCall;
        this.mail = mail;
        this.standings = standings;
        this.clinic = clinic;
        this.calendar = calendar;
        this.clock = clock;
    }

    /** The order as it stands now; who can no longer sign in is passed over. */
    public Escalation order() {
        var said = onCall.now(MACHINE).order();
        var able = onCall.able(MACHINE).stream().map(Account::id).collect(Collectors.toSet());
        return new Escalation(
                Duration.ofMinutes(said.minutes()),
                said.office().stream().filter(able::contains).toList(),
                said.outside().stream().filter(able::contains).toList(),
                new OfficeHours(clinic.officeOpens(), clinic.officeCloses(), clinic.zone(), calendar::isOpen));
    }

    /** The person named for items of this cause's rule, if there is one who can sign in. */
    public Optional<AccountId> named(Cause cause) {
        return cause.rule() == Rule.MISSED
                ? onCall.now(MACHINE)
                        .order()
                        .missed()
                        .filter(person -> onCall.able(MACHINE).stream()
                                .anyMatch(able -> able.id().equals(person)))
                : Optional.empty();
    }

    /** Who was told of each of the items so far. */
    public Map<UUID, List<Turn>> told(List<NeedItems.Row> rows) {
        return turns.of(rows.stream()
                .filter(NeedItems.Row::cannotWait)
                .map(NeedItems.Row::id)
                .toList());
    }

    /** Tells the next person of each of the child's items whose time has come. */
    public void advance(ChildId child) {
        var waiting = items.openOf(child).stream()
                .filter(NeedItems.Row::waitsForAnybody)
                .map(NeedItems.Row::id)
                .toList();
        // the status and the item stand still until the turn is written
        if (waiting.isEmpty() || !standings.hold(MACHINE, child).isWatched()) {
            return;
        }
        var order = order();
        var now = clock.instant();
        waiting.stream()
                .flatMap(id -> items.hold(id).stream())
                .filter(NeedItems.Row::waitsForAnybody)
                .forEach(row -> advance(row, order, now));
    }

    private void advance(NeedItems.Row row, Escalation order, Instant now) {
        var told = turns.of(List.of(row.id())).getOrDefault(row.id(), List.of());
        order.due(told, row.since(), now).ifPresent(turn -> {
            turns.add(row.id(), turn);
            tell(row, turn);
        });
    }

    private void tell(NeedItems.Row row, Turn turn) {
        var cause = cause(row.id());
        mail.send(
                MACHINE,
                row.child(),
                new StaffMail.Note(cause + "|" + turn.number(), cause, turn.person(), TEXT, turn.from()));
    }

    /** Whoever works an item has it: nobody else is written to. */
    @EventListener
    public void on(NeedWorked worked) {
        mail.noLonger(MACHINE, worked.child(), cause(worked.item()));
    }

    private static String cause(UUID item) {
        return "need|" + item;
    }
}
