package org.hearthway.demo;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Plan;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;

/** One visit of a story: booked, answered, and attended or not. */
class Appointment {

    private static final LocalTime OFFICE = LocalTime.of(11, 5);
    private static final LocalTime EVENING = LocalTime.of(18, 40);
    private static final String COORDINATOR = "coordinator";

    private final ChildhoodFactory services;
    private final DemoDays days;
    private final Function<String, Viewer.Person> person;
    private final Supplier<ChildId> child;
    private final Story.Seen seen;

    Appointment(
            ChildhoodFactory services,
            DemoDays days,
            Function<String, Viewer.Person> person,
            Supplier<ChildId> child,
            Story.Seen seen) {
        this.services = services;
        this.days = days;
        this.person = person;
        this.child = child;
        this.seen = seen;
    }

    void addTo(Acts acts) {
        var booked = new VisitId[1];
        var coordinator = person.apply(COORDINATOR);
        acts.at(
                days.atWork(seen.booked(), OFFICE.plusMinutes(20)),
                () -> booked[0] = services.visits()
                        .book(
                                coordinator,
                                child.get(),
                                new Visits.Booking(
                                        seen.kind(),
                                        day().atTime(seen.at()),
                                        minutes(),
                                        seen.place(),
                                        seen.purpose())));
        acts.at(days.atWork(seen.booked(), EVENING), () -> answer(booked[0]));
        seen.other()
                .ifPresent(other -> acts.at(
                        days.atWork(seen.booked(), EVENING.plusMinutes(50)),
                        () -> services.visits().askToMove(person.apply(other.by()), booked[0], 0, other.wish())));
        if (seen.came() == Story.Came.CANCELLED) {
            acts.at(days.moment(seen.booked() + 1, OFFICE), () -> settle(booked[0]));
        } else if (seen.day() < 0) {
            var after = days.atWork(seen.day(), seen.at()).plus(Duration.ofHours(9));
            acts.at(after, () -> settle(booked[0]));
        }
    }

    /** A visit to come that the plan asks for lies within the plan's window, whatever weekday today is. */
    private LocalDate day() {
        var day = days.open(seen.day());
        var window = seen.purpose().filter(purpose -> seen.day() > 0).flatMap(this::window);
        if (window.filter(w -> day.isBefore(w.from())).isPresent()) {
            return services.calendar().onOrAfter(window.get().from());
        }
        if (window.filter(w -> day.isAfter(w.until())).isPresent()) {
            return services.calendar().onOrBefore(window.get().until());
        }
        return day;
    }

    private Optional<Plan.VisitWindow> window(String purpose) {
        return services.plans().plans(person.apply(COORDINATOR), child.get()).stream()
                .flatMap(standing -> standing.plan().stages().stream())
                .flatMap(stage -> stage.visits().stream())
                .filter(window -> window.purpose().equals(purpose))
                .findFirst();
    }

    private int minutes() {
        return services.visits().kinds().stream()
                .filter(k -> k.id().equals(seen.kind()))
                .map(VisitKind::minutes)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("content/demo: no kind of visit " + seen.kind()));
    }

    private void answer(VisitId visit) {
        switch (seen.answered()) {
            case NOTHING -> {}
            case YES -> services.visits().confirm(person.apply(seen.by()), visit, 0);
            case ASKED_TO_MOVE -> services.visits().askToMove(person.apply(seen.by()), visit, 0, seen.wish());
        }
    }

    private void settle(VisitId visit) {
        var coordinator = person.apply(COORDINATOR);
        var version = services.visits().get(coordinator, visit).version();
        switch (seen.came()) {
            case NOT_NOTED -> {}
            case YES -> services.visits().attended(coordinator, visit, true, version);
            case NO -> services.visits().attended(coordinator, visit, false, version);
            case CANCELLED -> services.visits().cancel(coordinator, visit, version);
        }
    }
}
