package org.hearthway.demo;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.medicine.MedicineId;
import org.hearthway.medicine.Medicines.Again;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.Tapers.After;
import org.hearthway.medicine.Tapers.TaperData;
import org.hearthway.medicine.ToxinSessions.PlaceData;
import org.hearthway.medicine.ToxinSessions.SessionData;
import org.hearthway.medicine.ToxinSessions.State;
import org.hearthway.medicine.engine.TaperCalendar.Step;

/** Medicines and toxin sessions of a story: written down, checked by a second person, changed, tapered. */
record Shelf(
        ChildhoodFactory services, DemoDays days, Function<String, Viewer.Person> person, Supplier<ChildId> child) {

    private static final LocalTime WRITTEN = LocalTime.of(10, 10);
    private static final LocalTime CHECKED = WRITTEN.plusMinutes(25);
    private static final LocalTime SIGNED = LocalTime.of(14, 0);

    void add(Story.Taken story, Acts acts) {
        var known = new MedicineId[1];
        acts.at(
                days.atWork(story.day(), WRITTEN),
                () -> known[0] = services.medicines()
                        .enter(person.apply(story.by()), child.get(), data(story, story.dose()))
                        .id());
        story.checked()
                .ifPresent(second -> acts.at(
                        days.atWork(story.day(), CHECKED), () -> check(known[0], person.apply(second), story.dose())));
        story.change()
                .ifPresent(change -> acts.at(
                        days.atWork(change.day(), WRITTEN),
                        () -> services.medicines()
                                .change(
                                        person.apply(change.by()),
                                        child.get(),
                                        known[0],
                                        data(story, change.dose()),
                                        1)));
        story.taper().ifPresent(taper -> {
            acts.at(
                    days.atWork(taper.day(), SIGNED),
                    () -> services.tapers().sign(person.apply(taper.by()), child.get(), known[0], typed(taper), 0));
            taper.checked()
                    .ifPresent(second -> acts.at(
                            days.atWork(taper.day(), SIGNED.plusMinutes(20)),
                            () -> services.tapers()
                                    .confirm(person.apply(second), child.get(), known[0], typed(taper), 1)));
        });
    }

    private MedicineData data(Story.Taken story, String dose) {
        return new MedicineData(
                story.name(),
                story.form(),
                story.how(),
                dose,
                Optional.empty(),
                story.purpose().en(),
                story.purpose().es(),
                days.on(story.day()),
                story.prescriber(),
                Optional.empty());
    }

    private void check(MedicineId medicine, Viewer.Person second, String dose) {
        services.medicines()
                .confirm(second, child.get(), medicine, new Again(dose, Optional.empty(), Optional.empty()), 1);
    }

    private TaperData typed(Story.Stepped taper) {
        return new TaperData(
                taper.steps().stream()
                        .map(step -> new Step(days.on(step.from()), step.dose()))
                        .toList(),
                Optional.of(taper.stops().isPresent() ? After.STOP : After.STAY),
                taper.stops().map(days::on));
    }

    void add(Story.Shots story, Acts acts) {
        var places = story.places().stream()
                .map(shot -> new PlaceData(
                        Optional.of(shot.muscle()),
                        Optional.of(shot.side()),
                        Optional.of(BigDecimal.valueOf(shot.units())),
                        story.preparation()))
                .toList();
        acts.at(
                days.atWork(story.day(), SIGNED.plusHours(1)),
                () -> services.toxin()
                        .enter(
                                person.apply(story.by()),
                                child.get(),
                                new SessionData(State.GIVEN, days.open(story.day()), places, story.givenBy(), "", "")));
    }
}
