package org.hearthway.pump.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Devices;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.PumpRules;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.engine.RefillBy;
import org.hearthway.pump.events.RefillDateChanged;
import org.hearthway.words.Words;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The pumps of the clinic's children, as nurses recorded them. */
@Service
@EnableConfigurationProperties(PumpRules.class)
class RecordedPumps implements Pumps {

    private static final int YEARS_BACK = 2;
    private static final int YEARS_AHEAD = 10;
    private static final int NOTE_MOST = 500;

    private final FillRecords records;
    private final Devices devices;
    private final PumpRules rules;
    private final ClinicSettings settings;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    RecordedPumps(
            FillRecords records,
            Devices devices,
            PumpRules rules,
            ClinicSettings settings,
            Gate gate,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.records = records;
        this.devices = devices;
        this.rules = rules;
        this.settings = settings;
        this.gate = gate;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public PumpRules rules() {
        return rules;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Fill> current(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var pump = devices.pump(child);
        return records.newest(child).filter(fill -> counts(fill, pump));
    }

    /** Where no pump is on record the fill itself says that there is one. */
    private static boolean counts(Fill fill, Optional<PumpNow> pump) {
        return pump.isEmpty()
                || pump.filter(PumpNow::isIn)
                        .filter(now -> !fill.refillBy().filled().isBefore(now.since()))
                        .isPresent();
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<LocalDate> unfilledSince(Viewer viewer, ChildId child) {
        var counts = current(viewer, child);
        return devices.pump(child)
                .filter(pump -> pump.isIn() && counts.isEmpty())
                .map(PumpNow::since);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<LocalDate> takenOutOn(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return devices.pump(child).filter(pump -> !pump.isIn()).map(PumpNow::since);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Fill> history(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return records.of(child);
    }

    @Override
    @Transactional(readOnly = true)
    public Map<ChildId, LocalDate> refillDates(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var all = devices.pumps();
        return records.newest().entrySet().stream()
                .filter(fill -> counts(fill.getValue(), Optional.ofNullable(all.get(fill.getKey()))))
                .collect(Collectors.toUnmodifiableMap(
                        Map.Entry::getKey, e -> e.getValue().refillBy().day()));
    }

    @Override
    public RefillBy check(FillData data) {
        var today = LocalDate.ofInstant(clock.instant(), settings.zone());
        var problems = new ArrayList<Problem>();
        if (data.filled().isAfter(today)) {
            problems.add(Problem.at("filled", "pump.problem.filled.future"));
        }
        if (data.filled().isBefore(today.minusYears(YEARS_BACK))) {
            problems.add(Problem.at("filled", "pump.problem.filled.old", YEARS_BACK));
        }
        if (!data.alarm().isAfter(data.filled())) {
            problems.add(Problem.at("alarm", "pump.problem.alarm.before"));
        }
        if (data.alarm().isAfter(today.plusYears(YEARS_AHEAD))) {
            problems.add(Problem.at("alarm", "pump.problem.alarm.far", YEARS_AHEAD));
        }
        if (data.marginDays() < PumpRules.LEAST_MARGIN || data.marginDays() > PumpRules.MOST_MARGIN) {
            problems.add(Problem.at("margin", "pump.problem.margin", PumpRules.LEAST_MARGIN, PumpRules.MOST_MARGIN));
        }
        if (data.note().length() > NOTE_MOST) {
            problems.add(Problem.at("note", "pump.problem.note", NOTE_MOST));
        }
        Invalid.ifAny(problems);
        return RefillBy.of(data.filled(), data.alarm(), data.marginDays(), rules.lifeLimitDays());
    }

    @Override
    @Transactional
    public Fill record(Viewer viewer, ChildId child, FillData data, long seen) {
        gate.require(viewer, Action.RECORD_PUMP, child);
        if (!(viewer instanceof Viewer.Person person)) {
            // a fill has a person who answers for it
            throw new NotAvailable();
        }
        if (records.newest(child).map(Fill::number).orElse(0L) != seen) {
            throw new Overtaken();
        }
        Invalid.ifAny(devices.pump(child).stream()
                .flatMap(pump -> ofAnother(pump, data.filled()).stream())
                .toList());
        var refillBy = check(data);
        var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        var fill = new Fill(seen + 1, refillBy, data.note().strip(), person.account(), now);
        records.add(child, fill);
        events.publishEvent(
                new RefillDateChanged(child, viewer, now, refillBy.day(), words.both("pump.told", refillBy.day())));
        return fill;
    }

    /** A fill of a day on which the pump on record was not in: it would give a date to the wrong one. */
    private static Optional<Problem> ofAnother(PumpNow pump, LocalDate filled) {
        if (pump.isIn()) {
            return filled.isBefore(pump.since())
                    ? Optional.of(Problem.at("filled", "pump.problem.filled.before-pump", pump.since()))
                    : Optional.empty();
        }
        return filled.isAfter(pump.since())
                ? Optional.of(Problem.at("filled", "pump.problem.filled.no-pump", pump.since()))
                : Optional.empty();
    }
}
