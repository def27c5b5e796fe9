package org.hearthway.pump.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.child.Devices;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.PumpRules;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.pump.engine.PrintOutCheck;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.ReplacementPlan;
import org.hearthway.pump.engine.Residual;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Pumps as their books tell them. */
@Service
@EnableConfigurationProperties(PumpRules.class)
class KnownPumps implements Pumps {

    private final EntryRows rows;
    private final Books books;
    private final Devices devices;
    private final PumpRules rules;
    private final ClinicCalendar calendar;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Clock clock;

    KnownPumps(
            EntryRows rows,
            Books books,
            Devices devices,
            PumpRules rules,
            ClinicCalendar calendar,
            ClinicSettings clinic,
            Gate gate,
            Clock clock) {
        this.rows = rows;
        this.books = books;
        this.devices = devices;
        this.rules = rules;
        this.calendar = calendar;
        this.clinic = clinic;
        this.gate = gate;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Refill> refill(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return refill(books.open(child));
    }

    @Override
    @Transactional(readOnly = true)
    public Map<ChildId, Refill> refills(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var pumps = devices.pumps();
        var all = new HashMap<ChildId, Refill>();
        for (var child : rows.children()) {
            refill(books.open(rows.of(child), Optional.ofNullable(pumps.get(child))))
                    .ifPresent(refill -> all.put(child, refill));
        }
        return Map.copyOf(all);
    }

    /** While something waits, the earlier of what is sure and of what would follow stands. */
    private Optional<Refill> refill(Ledger book) {
        var waits = book.waitingFill();
        if (waits.isPresent()) {
            return Optional.of(new Refill(books.day(waits.get()), Optional.empty(), true));
        }
        return book.fill().map(fill -> {
            var sure = book.window(rules.clinic().refill(), calendar::isOpen);
            var possible = book.waiting().isEmpty()
                    ? Optional.<RefillWindow>empty()
                    : book.withWaiting().window(rules.clinic().refill(), calendar::isOpen);
            var earlier = possible.filter(
                    other -> sure.map(one -> other.day().isBefore(one.day())).orElse(true));
            return new Refill(books.day(fill), earlier.or(() -> sure), false);
        });
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<LocalDate> unfilledSince(Viewer viewer, ChildId child) {
        var counts = refill(viewer, child);
        return devices.pump(child)
                .filter(pump -> pump.isIn() && counts.isEmpty())
                .map(PumpNow::since);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<LocalDate> takenOutOn(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return devices.pump(child).filter(pump -> !pump.isIn()).map(PumpNow::since);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Running> running(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var book = books.open(child);
        var sure = book.lastSetting();
        var doubtful = book.waiting().stream()
                .filter(entry -> entry.what().setting().isPresent())
                .reduce((first, second) -> second);
        return doubtful.<Running>map(entry -> new Running(Optional.empty(), books.day(entry)))
                .or(() -> sure.map(entry -> new Running(entry.what().setting(), books.day(entry))));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Waiting> waiting(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return books.open(child).waiting().stream()
                .map(entry -> new Waiting(entry.number(), entry.isRefill(), entry.by(), entry.entered()))
                .sorted(Comparator.comparing(Waiting::since))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Concern> concerns(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var book = books.open(child);
        var all = new ArrayList<Concern>();
        printOut(child, book).ifPresent(all::add);
        residual(book).ifPresent(all::add);
        replacement(child, book).ifPresent(all::add);
        return List.copyOf(all);
    }

    private Optional<Concern> printOut(ChildId child, Ledger book) {
        return book.printOut()
                .filter(entry -> !rows.explained(child).containsKey(entry.number()))
                .filter(entry -> book.window(rules.clinic().refill(), calendar::isOpen)
                        .flatMap(RefillWindow::printOut)
                        .filter(PrintOutCheck::flagged)
                        .isPresent())
                .map(entry -> new Concern(Concern.Kind.PRINT_OUT, entry.number(), books.day(entry)));
    }

    private Optional<Concern> residual(Ledger book) {
        return book.fill()
                .filter(fill -> Findings.of(book, fill, rules.clinic().residual())
                        .filter(Residual::flagged)
                        .isPresent())
                .map(fill -> new Concern(Concern.Kind.RESIDUAL, fill.number(), books.day(fill)));
    }

    private Optional<Concern> replacement(ChildId child, Ledger book) {
        var today = LocalDate.ofInstant(clock.instant(), clinic.zone());
        return devices.pump(child)
                .filter(PumpNow::isIn)
                .flatMap(pump -> book.implant()
                        .map(known -> ReplacementPlan.of(
                                pump.since(),
                                known.model().life(),
                                rules.clinic().replacement())))
                .filter(plan -> !plan.planFrom().isAfter(today))
                .map(plan -> new Concern(Concern.Kind.REPLACEMENT, 0, plan.planFrom()));
    }
}
