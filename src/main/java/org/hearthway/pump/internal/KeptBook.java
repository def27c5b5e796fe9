package org.hearthway.pump.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Devices;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.child.SamePerson;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Check;
import org.hearthway.pump.PumpEntry.Correction;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.PumpOutlook;
import org.hearthway.pump.PumpOutlook.Explanation;
import org.hearthway.pump.PumpRules;
import org.hearthway.pump.PumpSums;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.pump.engine.PrintOutCheck;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.ReplacementPlan;
import org.hearthway.pump.events.PumpEntered;
import org.hearthway.pump.events.PumpEntryChecked;
import org.hearthway.pump.events.PumpPrintOutExplained;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Books of pumps as two people write them, each for themselves. */
@Service
class KeptBook implements PumpBook {

    private final EntryRows rows;
    private final Books books;
    private final Devices devices;
    private final ChildRegister children;
    private final SamePerson people;
    private final PumpRules rules;
    private final ClinicCalendar calendar;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    KeptBook(
            EntryRows rows,
            Books books,
            Devices devices,
            ChildRegister children,
            SamePerson people,
            PumpRules rules,
            ClinicCalendar calendar,
            ClinicSettings clinic,
            Gate gate,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.books = books;
        this.devices = devices;
        this.children = children;
        this.people = people;
        this.rules = rules;
        this.calendar = calendar;
        this.clinic = clinic;
        this.gate = gate;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public ClinicRules rules() {
        return rules.clinic();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Line> history(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var all = rows.of(child);
        var whole = new Ledger(all, clinic.zone());
        return all.stream()
                .sorted(Comparator.comparing(PumpEntry::number).reversed())
                .map(entry -> line(viewer, entry, whole))
                .toList();
    }

    private static Line line(Viewer viewer, PumpEntry entry, Ledger book) {
        var superseded = book.supersededBy(entry.number());
        var waits = !entry.isSure() && superseded.isEmpty();
        var own = viewer instanceof Viewer.Person person && person.account().equals(entry.by());
        return new Line(
                entry.number(),
                entry.at(),
                entry.kind(),
                entry.by(),
                entry.entered(),
                entry.emergency(),
                waits,
                superseded,
                waits && !own ? Optional.empty() : Optional.of(entry));
    }

    @Override
    @Transactional(readOnly = true)
    public PumpOutlook outlook(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var book = books.open(child);
        var kept = rules.clinic();
        var window = book.window(kept.refill(), calendar::isOpen);
        var reservoir = book.reservoir();
        var explained = book.printOut()
                .flatMap(entry -> Optional.ofNullable(rows.explained(child).get(entry.number())));
        return new PumpOutlook(
                book.implant(),
                book.fill(),
                book.lastSetting().flatMap(entry -> entry.what().setting()),
                reservoir,
                reservoir.map(
                        known -> RefillForecast.of(known, own(book, kept.refill()), clinic.zone(), calendar::isOpen)),
                window,
                window.flatMap(RefillWindow::printOut)
                                .filter(PrintOutCheck::flagged)
                                .isPresent()
                        && explained.isEmpty(),
                explained,
                reservoir.flatMap(known -> known.last().program().shift(clock.instant(), clinic.zone())),
                devices.pump(child)
                        .filter(PumpNow::isIn)
                        .flatMap(pump -> book.implant()
                                .map(known -> ReplacementPlan.of(
                                        pump.since(), known.model().life(), kept.replacement()))),
                Findings.all(book, kept.residual(), clinic.zone()));
    }

    private static RefillRules own(Ledger book, RefillRules usual) {
        return book.fill()
                .map(PumpEntry::what)
                .filter(PumpEntry.Refill.class::isInstance)
                .map(refill -> usual.withMargin(((PumpEntry.Refill) refill).marginDays()))
                .orElse(usual);
    }

    @Override
    @Transactional(readOnly = true)
    public PumpSums reckon(Viewer viewer, ChildId child, NewEntry entry) {
        var person = person(viewer, child);
        return reckon(viewer, child, entry, entry(rows.last(child) + 1, entry, person.account(), now()), false);
    }

    /**
     * Refuses what cannot be, and reckons the rest as if it were checked already.
     *
     * @param whole whether what is not there yet is refused, too
     */
    private PumpSums reckon(Viewer viewer, ChildId child, NewEntry entry, PumpEntry kept, boolean whole) {
        var all = rows.of(child);
        var pump = devices.pump(child);
        var book = before(books.open(all, pump), entry);
        var checks = new EntryChecks(clock.instant(), clinic.zone());
        var wrong =
                checks.of(entry, book, pump, all.stream().map(PumpEntry::number).toList());
        Invalid.ifAny(whole ? checks.found() : wrong);
        var who = new Reckoner.Who(children.get(viewer, child).data().birthDate(), pump.map(PumpNow::since));
        return new Reckoner(rules.clinic(), clinic.zone(), calendar::isOpen, rules.findingDays())
                .reckon(book, kept, who);
    }

    /** A correction is held against the book without what it corrects. */
    private Ledger before(Ledger book, NewEntry entry) {
        return entry.corrects().map(Correction::entry).map(book::without).orElse(book);
    }

    @Override
    @Transactional
    public PumpEntry enter(Viewer viewer, ChildId child, NewEntry entry, long seen) {
        var person = person(viewer, child);
        var last = rows.last(child);
        // in an emergency nothing stands in the way of what was done; two who write at once still get two numbers
        if (last != seen && !entry.emergency()) {
            throw new Overtaken();
        }
        var kept = entry(last + 1, entry, person.account(), now());
        var sums = reckon(viewer, child, entry, kept, true);
        if (sums.wantsWords() && entry.unusual().isBlank() && !entry.emergency()) {
            throw new Invalid(Problem.at("unusual", "pump.problem.unusual"));
        }
        rows.add(child, kept);
        events.publishEvent(
                new PumpEntered(child, viewer, kept.entered(), sums.step().isPresent(), books.day(kept)));
        return kept;
    }

    private PumpEntry entry(long number, NewEntry entry, AccountId by, Instant entered) {
        return new PumpEntry(
                number,
                entry.at().atZone(clinic.zone()).toInstant(),
                entry.what(),
                entry.corrects(),
                entry.emergency(),
                entry.unusual().strip(),
                by,
                entered,
                Optional.empty(),
                false);
    }

    @Override
    @Transactional
    public void check(Viewer viewer, ChildId child, long number, Again again) {
        var person = person(viewer, child);
        var entry = new Ledger(rows.of(child), clinic.zone())
                .waiting().stream()
                        .filter(one -> one.number() == number)
                        .findFirst()
                        .orElseThrow(Overtaken::new);
        if (people.areOne(entry.by(), person.account())) {
            throw new Invalid(Problem.at("", "pump.problem.same-person"));
        }
        Invalid.ifAny(differences(entry, again));
        var before = refill(child);
        var check = new Check(person.account(), now());
        rows.check(child, number, check);
        var after = refill(child);
        events.publishEvent(new PumpEntryChecked(
                child,
                viewer,
                check.at(),
                after.filter(day -> !Optional.of(day).equals(before)).map(day -> words.both("pump.told", day))));
    }

    private Optional<LocalDate> refill(ChildId child) {
        return books.open(child)
                .window(rules.clinic().refill(), calendar::isOpen)
                .map(RefillWindow::day);
    }

    /** Says which figure differs, never the first one's value: the second person must read, not copy. */
    private static List<Problem> differences(PumpEntry entry, Again again) {
        var problems = new ArrayList<Problem>();
        entry.what().keyFigures().forEach((figure, value) -> {
            if (!value.equals(again.figures().get(figure))) {
                problems.add(Problem.at(figure.name(), "pump.problem.differs"));
            }
        });
        again.figures().keySet().stream()
                .filter(figure -> !entry.what().keyFigures().containsKey(figure))
                .forEach(figure -> problems.add(Problem.at(figure.name(), "pump.problem.differs")));
        var dosing = entry.what().setting().map(Setting::dosing).map(DosingRows::inOrder);
        if (!dosing.equals(again.dosing().map(DosingRows::inOrder))) {
            problems.add(Problem.at("dosing", "pump.problem.differs"));
        }
        return problems;
    }

    @Override
    @Transactional
    public void explain(Viewer viewer, ChildId child, long number, String words) {
        var person = person(viewer, child);
        var checks = new EntryChecks(clock.instant(), clinic.zone());
        checks.reason("explained", words);
        Invalid.ifAny(checks.found());
        if (books.open(child)
                .printOut()
                .filter(entry -> entry.number() == number)
                .isEmpty()) {
            throw new Overtaken();
        }
        var said = new Explanation(words.strip(), person.account(), now());
        rows.explain(child, number, said);
        events.publishEvent(new PumpPrintOutExplained(child, viewer, said.at()));
    }

    private Viewer.Person person(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.RECORD_PUMP, child);
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        // an entry has a person who answers for it
        throw new NotAvailable();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
