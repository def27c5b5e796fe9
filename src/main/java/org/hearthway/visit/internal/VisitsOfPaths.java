package org.hearthway.visit.internal;

import java.time.Clock;
import java.time.Instant;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.events.PathChanged;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.State;
import org.hearthway.visit.events.VisitBooked;
import org.hearthway.visit.events.VisitCancelled;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Visits that a stage asked for leave with it when it leaves the plan, and come back when that is taken back. What was
 * cancelled by a person stays so, and so does what is over. A path begun in place of another moves none: the team
 * decides.
 */
@Component
class VisitsOfPaths {

    private static final Viewer PATH = new Viewer.Machine("path");

    private final Plans plans;
    private final VisitStore store;
    private final VisitWords words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    VisitsOfPaths(Plans plans, VisitStore store, VisitWords words, Clock clock, ApplicationEventPublisher events) {
        this.plans = plans;
        this.store = store;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @EventListener
    void on(PathChanged change) {
        plans.plans(PATH, change.child()).forEach(found -> follow(change.child(), found.plan(), clock.instant()));
    }

    private void follow(ChildId child, Plan plan, Instant now) {
        for (var visit : store.ofChild(child)) {
            var asked = visit.purpose()
                    .filter(purpose -> purpose.startsWith(plan.template().id() + "/"));
            if (asked.isPresent() && visit.endsAt().isAfter(now)) {
                follow(visit, isAsked(plan, asked.get(), visit), now);
            }
        }
    }

    private void follow(Visit visit, boolean asked, Instant now) {
        if (visit.state() == State.BOOKED && !asked) {
            store.insertVersion(visit.inState(State.CANCELLED), PATH, now);
            events.publishEvent(
                    new VisitCancelled(visit.child(), PATH, now, visit.id().value(), words.cancelled(visit)));
        } else if (visit.state() == State.CANCELLED
                && asked
                && store.lastChangedBy(visit.id()).equals(PATH.tag())) {
            store.insertVersion(visit.inState(State.BOOKED), PATH, now);
            events.publishEvent(
                    new VisitBooked(visit.child(), PATH, now, visit.id().value(), words.booked(visit)));
        }
    }

    private static boolean isAsked(Plan plan, String purpose, Visit visit) {
        var day = visit.start().toLocalDate();
        return plan.stages().stream()
                        .anyMatch(stage -> purpose.startsWith(
                                plan.template().id() + "/" + stage.stage().id() + "/"))
                && plan.over().filter(over -> day.isAfter(over.day())).isEmpty();
    }
}
