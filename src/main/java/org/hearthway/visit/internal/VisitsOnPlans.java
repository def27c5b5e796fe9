package org.hearthway.visit.internal;

import java.time.Clock;
import java.util.List;
import org.hearthway.base.ChildId;
import org.hearthway.path.VisitsForPlans;
import org.hearthway.visit.Visit;
import org.springframework.stereotype.Component;

/** Tells the plans which visits were booked for them. */
@Component
class VisitsOnPlans implements VisitsForPlans {

    private final VisitStore store;
    private final Clock clock;

    VisitsOnPlans(VisitStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    @Override
    public List<Booked> ahead(ChildId child) {
        return store.ofChild(child).stream()
                .filter(visit ->
                        visit.state() == Visit.State.BOOKED && visit.endsAt().isAfter(clock.instant()))
                .flatMap(visit -> visit.purpose().stream()
                        .map(purpose -> new Booked(purpose, visit.kind().name(), visit.start())))
                .toList();
    }
}
