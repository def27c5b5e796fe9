package org.hearthway.demo;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Things that people did, each at its moment, done again in that order with the clock standing there. */
class Acts {

    private record Act(Instant at, Runnable what) {}

    private final List<Act> acts = new ArrayList<>();

    /** Adds what was done at a moment. Of two at the same moment the first added comes first. */
    void at(Instant moment, Runnable what) {
        acts.add(new Act(moment, what));
    }

    /** Does everything that does not lie after now. */
    void liveThrough(DemoClock clock) {
        var now = clock.instant();
        try {
            acts.stream()
                    .filter(act -> !act.at().isAfter(now))
                    .sorted(Comparator.comparing(Act::at))
                    .forEach(act -> {
                        clock.goTo(act.at());
                        act.what().run();
                    });
        } finally {
            clock.comeBack();
        }
    }
}
