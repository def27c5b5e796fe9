package org.hearthway.pump.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Devices;
import org.hearthway.child.SamePerson;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.PumpSettings;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.events.PumpSettingConfirmed;
import org.hearthway.pump.events.PumpSettingEntered;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Settings of pumps as two people copied them, each for themselves. */
@Service
class CopiedSettings implements PumpSettings {

    private static final int YEARS_BACK = 2;

    private final SettingRows rows;
    private final Devices devices;
    private final SamePerson people;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    CopiedSettings(
            SettingRows rows,
            Devices devices,
            SamePerson people,
            ClinicSettings clinic,
            Gate gate,
            Clock clock,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.devices = devices;
        this.people = people;
        this.clinic = clinic;
        this.gate = gate;
        this.clock = clock;
        this.events = events;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Setting> current(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return rows.of(child).stream().findFirst();
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Setting> ofThisPump(Viewer viewer, ChildId child) {
        var pump = devices.pump(child);
        return current(viewer, child)
                .filter(setting -> pump.isEmpty()
                        || pump.filter(now -> now.isIn() && !setting.on().isBefore(now.since()))
                                .isPresent());
    }

    @Override
    @Transactional(readOnly = true)
    public List<Setting> history(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return rows.of(child);
    }

    @Override
    @Transactional
    public Setting enter(Viewer viewer, ChildId child, SettingData data, long seen) {
        var person = person(viewer, child);
        if (rows.of(child).stream().findFirst().map(Setting::number).orElse(0L) != seen) {
            throw new Overtaken();
        }
        check(data);
        var setting = new Setting(
                seen + 1,
                new Concentration(data.strength()),
                new DailyDose(data.dose()),
                data.on(),
                person.account(),
                now(),
                Optional.empty());
        rows.add(child, setting);
        events.publishEvent(new PumpSettingEntered(child, viewer, setting.at()));
        return setting;
    }

    @Override
    @Transactional
    public void confirm(Viewer viewer, ChildId child, SettingData again, long seen) {
        var person = person(viewer, child);
        var current = rows.of(child).stream()
                .findFirst()
                .filter(setting -> setting.number() == seen && setting.check().isEmpty())
                .orElseThrow(Overtaken::new);
        if (people.areOne(current.by(), person.account())) {
            throw new Invalid(Problem.at("", "pump.problem.same-person"));
        }
        check(again);
        compare(current, again);
        var check = new Check(person.account(), now());
        rows.check(child, seen, check);
        events.publishEvent(new PumpSettingConfirmed(child, viewer, check.at()));
    }

    private void check(SettingData data) {
        var today = LocalDate.ofInstant(clock.instant(), clinic.zone());
        var problems = new ArrayList<Problem>();
        if (!Concentration.isPossible(data.strength())) {
            problems.add(Problem.at("strength", "pump.problem.strength", Concentration.LEAST, Concentration.MOST));
        }
        if (!DailyDose.isPossible(data.dose())) {
            problems.add(Problem.at("dose", "pump.problem.dose", DailyDose.LEAST, DailyDose.MOST));
        }
        if (data.on().isAfter(today) || data.on().isBefore(today.minusYears(YEARS_BACK))) {
            problems.add(Problem.at("on", "pump.problem.on", YEARS_BACK));
        }
        Invalid.ifAny(problems);
    }

    /** Says which number differs, never the other's value: the second person must read, not copy. */
    private static void compare(Setting current, SettingData again) {
        var problems = new ArrayList<Problem>();
        if (!new Concentration(again.strength()).equals(current.strength())) {
            problems.add(Problem.at("strength", "pump.problem.differs"));
        }
        if (!new DailyDose(again.dose()).equals(current.dose())) {
            problems.add(Problem.at("dose", "pump.problem.differs"));
        }
        if (!again.on().equals(current.on())) {
            problems.add(Problem.at("on", "pump.problem.differs"));
        }
        Invalid.ifAny(problems);
    }

    private Viewer.Person person(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.RECORD_PUMP, child);
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
