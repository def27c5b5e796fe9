package org.hearthway.medicine.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
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
import org.hearthway.child.SamePerson;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.medicine.MedicineId;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.SecondCheck;
import org.hearthway.medicine.events.MedicineChanged;
import org.hearthway.medicine.events.MedicineConfirmed;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Medicines as two people copied them from a prescription, each for themselves. */
@Service
class CheckedMedicines implements Medicines {

    private final MedicineRows rows;
    private final MedicineList list;
    private final SamePerson people;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    CheckedMedicines(
            MedicineRows rows,
            MedicineList list,
            SamePerson people,
            ClinicSettings clinic,
            Gate gate,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.list = list;
        this.people = people;
        this.clinic = clinic;
        this.gate = gate;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    @Transactional(readOnly = true)
    public Shown shown(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return list.shown(child);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Medicine> current(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return list.newest(child);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Medicine> history(Viewer viewer, ChildId child, MedicineId medicine) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return list.versions(child).getOrDefault(medicine, List.of());
    }

    @Override
    @Transactional
    public Medicine enter(Viewer viewer, ChildId child, MedicineData data) {
        return write(person(viewer, child), child, MedicineId.random(), data, 1);
    }

    @Override
    @Transactional
    public Medicine change(Viewer viewer, ChildId child, MedicineId medicine, MedicineData data, long seen) {
        var person = person(viewer, child);
        if (newest(child, medicine).version() != seen) {
            throw new Overtaken();
        }
        return write(person, child, medicine, data, seen + 1);
    }

    private Medicine write(Viewer.Person person, ChildId child, MedicineId id, MedicineData data, long version) {
        MedicineRules.check(data, LocalDate.ofInstant(clock.instant(), clinic.zone()));
        var written = new Medicine(id, child, version, stripped(data), person.account(), now(), Optional.empty());
        rows.add(written);
        events.publishEvent(new MedicineChanged(child, person, written.at()));
        return written;
    }

    private static MedicineData stripped(MedicineData data) {
        return new MedicineData(
                data.name().strip(),
                data.form().strip(),
                data.how(),
                data.dose().strip(),
                data.quantity(),
                data.purposeEn().strip(),
                data.purposeEs().strip(),
                data.since(),
                data.prescriber().strip(),
                data.stop().map(stop -> new Stop(stop.on(), stop.reason().strip())));
    }

    @Override
    @Transactional
    public void confirm(Viewer viewer, ChildId child, MedicineId medicine, Again again, long seen) {
        var person = person(viewer, child);
        var newest = newest(child, medicine);
        if (newest.version() != seen || newest.check().isPresent()) {
            throw new Overtaken();
        }
        if (people.areOne(newest.by(), person.account())) {
            throw new Invalid(Problem.at("", "medicine.problem.same-person"));
        }
        MedicineRules.compare(newest.data(), again);
        var check = new SecondCheck(person.account(), now());
        rows.check(newest, check);
        events.publishEvent(new MedicineConfirmed(child, viewer, check.at(), words.both("medicine.told.list")));
    }

    private Medicine newest(ChildId child, MedicineId medicine) {
        var versions = list.versions(child).getOrDefault(medicine, List.of());
        return versions.stream().findFirst().orElseThrow(NotAvailable::new);
    }

    private Viewer.Person person(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.RECORD_MEDICINE, child);
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
