package org.hearthway.caseload.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Predicate;
import org.hearthway.base.AccountId;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Cause;
import org.hearthway.caseload.engine.Facts;
import org.hearthway.caseload.engine.Figure;
import org.hearthway.caseload.engine.NeedsRules;
import org.hearthway.caseload.engine.Office;
import org.hearthway.caseload.engine.Reconciliation;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Standings;
import org.hearthway.child.events.ChildCorrected;
import org.hearthway.child.events.DeviceRecorded;
import org.hearthway.child.events.StandingChanged;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.medicine.events.MedicineChanged;
import org.hearthway.medicine.events.MedicineConfirmed;
import org.hearthway.medicine.events.TaperConfirmed;
import org.hearthway.medicine.events.TaperSigned;
import org.hearthway.path.events.PathChanged;
import org.hearthway.program.events.ProgramSaved;
import org.hearthway.program.events.SessionLogged;
import org.hearthway.program.events.SessionTakenBack;
import org.hearthway.pump.events.PumpEntered;
import org.hearthway.pump.events.PumpEntryChecked;
import org.hearthway.pump.events.PumpPrintOutExplained;
import org.hearthway.sign.events.SignReported;
import org.hearthway.stimulator.events.GeneratorDescribed;
import org.hearthway.stimulator.events.StimulatorRead;
import org.hearthway.stimulator.events.StimulatorReadingConfirmed;
import org.hearthway.surveillance.events.CheckRecorded;
import org.hearthway.task.events.TaskGiven;
import org.hearthway.task.events.TaskWorked;
import org.hearthway.visit.events.VisitAttended;
import org.hearthway.visit.events.VisitBooked;
import org.hearthway.visit.events.VisitCancelled;
import org.hearthway.visit.events.VisitMoved;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Keeps the list true: looks at a child whenever something that matters happened to it, in the same transaction, and
 * at every child now and then, because days pass without an event.
 */
@Component
class NeedsWatch {

    private static final Viewer.Machine MACHINE = new Viewer.Machine("needs");

    private final ChildFacts facts;
    private final NeedItems items;
    private final ClinicBook books;
    private final ChildRegister children;
    private final Standings standings;
    private final Escalations escalations;
    private final Office office;
    private final Clock clock;
    private final TransactionTemplate together;
    private final TransactionTemplate apart;
    private final AtomicLong edition = new AtomicLong();

    NeedsWatch(
            ChildFacts facts,
            NeedItems items,
            ClinicBook books,
            ChildRegister children,
            Standings standings,
            Escalations escalations,
            ClinicSettings settings,
            ClinicCalendar calendar,
            Clock clock,
            PlatformTransactionManager transactions) {
        this.facts = facts;
        this.items = items;
        this.books = books;
        this.children = children;
        this.standings = standings;
        this.escalations = escalations;
        this.office = new Office(settings.zone(), settings.officeCloses(), calendar::onOrAfter);
        this.clock = clock;
        this.together = new TransactionTemplate(transactions);
        this.apart = new TransactionTemplate(transactions);
        this.apart.setPropagationBehavior(TransactionDefinition.PROPAGATION_NESTED);
    }

    @EventListener({
        SessionTakenBack.class,
        ProgramSaved.class,
        SignReported.class,
        PumpEntered.class,
        DeviceRecorded.class,
        PumpEntryChecked.class,
        PumpPrintOutExplained.class,
        MedicineChanged.class,
        MedicineConfirmed.class,
        TaperSigned.class,
        TaperConfirmed.class,
        VisitBooked.class,
        VisitMoved.class,
        VisitCancelled.class,
        VisitAttended.class,
        TaskGiven.class,
        TaskWorked.class,
        PathChanged.class,
        StandingChanged.class,
        CheckRecorded.class,
        StimulatorRead.class,
        StimulatorReadingConfirmed.class,
        GeneratorDescribed.class,
        ChildCorrected.class
    })
    void on(Change change) {
        look(change.child());
    }

    /**
     * A tick changes the list at once where it carries a pain that needs a look, or where something of the home record
     * stands open that it may end. What only a row of days shows comes with the next round: at the hour when every family
     * ticks, nobody waits for it.
     */
    @EventListener
    void on(SessionLogged tick) {
        var pain = books.now().figure(Figure.PAIN_FROM);
        if (tick.pain().filter(said -> said >= pain).isPresent()
                || items.openOf(tick.child()).stream()
                        .anyMatch(row -> restsOnTicks(row.cause().rule()))) {
            look(tick.child());
        }
    }

    private static boolean restsOnTicks(Rule rule) {
        return rule.isOfHomeRecord() || rule == Rule.MORE;
    }

    /** Looks at every child, each in a transaction of its own. */
    @Scheduled(
            initialDelayString = "${hearthway.needs.first:PT5S}",
            fixedDelayString = "${hearthway.needs.every:PT10M}")
    void lookAtAll() {
        children.all(MACHINE).forEach(child -> look(child.id()));
    }

    /** Looks at every child when the clinic's numbers are others, here or on another machine. */
    @Scheduled(
            initialDelayString = "${hearthway.needs.first:PT5S}",
            fixedDelayString = "${hearthway.needs.numbers:PT15S}")
    void lookWhenNumbersChanged() {
        var now = books.edition();
        if (edition.getAndSet(now) != now) {
            lookAtAll();
        }
    }

    /** Brings the child's open items in line with the facts. */
    void look(ChildId child) {
        together.executeWithoutResult(transaction -> {
            bringInLine(child);
            escalations.advance(child);
        });
    }

    /** Of a child that nobody watches any more nothing is opened and nothing is ended, so that taking it back restores all. */
    private void bringInLine(ChildId child) {
        var status = standings.now(MACHINE, child).status();
        if (!status.isWatched()) {
            return;
        }
        // tasks and the path rest with the family: while nothing is asked of it their items stand still
        Predicate<Cause> counts = cause -> status.asksTheFamily()
                || !(cause.rule() == Rule.TASK || cause.rule().isOfPath());
        var now = clock.instant();
        var today = office.dayOf(now);
        var book = books.now();
        var known = facts.of(MACHINE, child, today, office, book, answered(child));
        var rows = items.openOf(child).stream()
                .filter(row -> counts.test(row.cause()))
                .toList();
        var causes = new NeedsRules(book, office)
                .causes(known, today).stream().filter(counts).toList();
        var work = Reconciliation.of(
                rows.stream().map(NeedItems.Row::cause).toList(), items.settled(child), causes, known);
        work.open().forEach(cause -> open(child, cause, known));
        work.refreshed()
                .forEach(cause -> rows.stream()
                        .filter(row -> row.cause().key().equals(cause.key()))
                        .forEach(row -> items.refresh(row, cause)));
        rows.forEach(row -> {
            var gone = work.ended().get(row.cause().key());
            if (gone != null && items.end(row, gone, now)) {
                items.step(row.id(), row.version() + 1, "GONE", MACHINE.tag(), now, null, gone.name());
            }
        });
    }

    private Map<Rule, LocalDate> answered(ChildId child) {
        var days = new EnumMap<Rule, LocalDate>(Rule.class);
        items.lastAnswered(child).forEach((rule, at) -> {
            if (rule.isOfHomeRecord()) {
                days.put(rule, office.dayOf(at));
            }
        });
        return days;
    }

    /** Who has it from the beginning: the one whose task it is, or whom the clinic named. */
    private Optional<AccountId> owner(Cause cause, Facts known) {
        return cause.rule() == Rule.TASK
                ? known.tasks().stream()
                        .filter(task -> task.key().equals(cause.subject()))
                        .findFirst()
                        .flatMap(Facts.OpenTask::with)
                : escalations.named(cause);
    }

    /** A report may have been read while nobody watched the child: then it comes here as one that was looked at. */
    private static Optional<Facts.Read> reader(Cause cause, Facts known) {
        return known.reports().stream()
                .filter(report ->
                        cause.rule() == Rule.SIGN && report.key().toString().equals(cause.subject()))
                .findFirst()
                .flatMap(Facts.Report::read);
    }

    /** Another transaction may open the same item at the same moment: then this one's savepoint is rolled back. */
    private void open(ChildId child, Cause cause, Facts known) {
        try {
            apart.executeWithoutResult(
                    savepoint -> items.add(child, cause, owner(cause, known), reader(cause, known), clock.instant()));
        } catch (DuplicateKeyException alreadyOpen) {
            // the item is there, which is all that was wanted
        }
    }
}
