package org.hearthway.visit.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.path.VisitsOnDay;
import org.springframework.stereotype.Component;

/** Tells which visits stand on a day that the clinic may close. */
@Component
class VisitsOnClosedDay implements VisitsOnDay {

    private final VisitStore store;
    private final Clock clock;

    VisitsOnClosedDay(VisitStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    @Override
    public List<Standing> on(LocalDate day) {
        return store.bookedBetween(day.atStartOfDay(), day.plusDays(1).atStartOfDay()).stream()
                .filter(visit -> visit.endsAt().isAfter(clock.instant()))
                .map(visit -> new Standing(visit.child(), visit.kind().name(), visit.start()))
                .toList();
    }
}
