package org.hearthway.medicine.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
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
import org.hearthway.medicine.Medicines.Medicine;
import org.hearthway.medicine.SecondCheck;
import org.hearthway.medicine.Tapers;
import org.hearthway.medicine.events.TaperConfirmed;
import org.hearthway.medicine.events.TaperSigned;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Taper calendars as a physician signed them and a second person typed them again. */
@Service
class SignedTapers implements Tapers {

    private final TaperRows rows;
    private final MedicineList list;
    private final SamePerson people;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    SignedTapers(
            TaperRows rows,
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
    public Map<MedicineId, Taper> current(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var versions = list.versions(child);
        var newest = new LinkedHashMap<MedicineId, Taper>();
        list.calendars(child)
                .forEach((medicine, tapers) ->
                        newest.put(medicine, taper(tapers.get(0), versions.getOrDefault(medicine, List.of()))));
        return newest;
    }

    private static Taper taper(TaperRows.Kept kept, List<Medicine> versions) {
        var holds = versions.stream()
                .findFirst()
                .filter(newest -> MedicineList.holdsFor(newest, versions).test(kept))
                .isPresent();
        return new Taper(
                kept.medicine(),
                kept.child(),
                kept.number(),
                kept.calendar(),
                holds,
                kept.by(),
                kept.at(),
                kept.check());
    }

    @Override
    @Transactional(readOnly = true)
    public SortedSet<LocalDate> changeDays(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return list.changeDays(child);
    }

    @Override
    @Transactional
    public Taper sign(Viewer viewer, ChildId child, MedicineId medicine, TaperData data, long seen) {
        var person = person(viewer, child, Action.SIGN_MEDICINE);
        var versions = versions(child, medicine);
        if (newest(child, medicine).map(TaperRows.Kept::number).orElse(0L) != seen) {
            throw new Overtaken();
        }
        if (versions.get(0).data().stop().isPresent()) {
            throw new Invalid(Problem.at("", "medicine.problem.taper-stopped"));
        }
        var kept = new TaperRows.Kept(
                medicine,
                child,
                seen + 1,
                versions.get(0).version(),
                TaperRules.check(data, today()),
                person.account(),
                now(),
                Optional.empty());
        rows.add(kept);
        events.publishEvent(new TaperSigned(child, viewer, kept.at()));
        return taper(kept, versions);
    }

    @Override
    @Transactional
    public void confirm(Viewer viewer, ChildId child, MedicineId medicine, TaperData again, long seen) {
        var person = person(viewer, child, Action.RECORD_MEDICINE);
        var versions = versions(child, medicine);
        var newest = newest(child, medicine)
                .filter(kept -> kept.number() == seen && kept.check().isEmpty())
                .filter(MedicineList.holdsFor(versions.get(0), versions))
                .orElseThrow(Overtaken::new);
        if (people.areOne(newest.by(), person.account())) {
            throw new Invalid(Problem.at("", "medicine.problem.same-person"));
        }
        TaperRules.compare(newest.calendar(), TaperRules.check(again, today()));
        var check = new SecondCheck(person.account(), now());
        rows.check(newest, check);
        events.publishEvent(new TaperConfirmed(child, viewer, check.at(), words.both("medicine.told.calendar")));
    }

    private Optional<TaperRows.Kept> newest(ChildId child, MedicineId medicine) {
        return list.calendars(child).getOrDefault(medicine, List.of()).stream().findFirst();
    }

    private List<Medicine> versions(ChildId child, MedicineId medicine) {
        var versions = list.versions(child).getOrDefault(medicine, List.of());
        if (versions.isEmpty()) {
            throw new NotAvailable();
        }
        return versions;
    }

    private Viewer.Person person(Viewer viewer, ChildId child, Action action) {
        gate.require(viewer, action, child);
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
