package org.hearthway.demo;

import java.time.Clock;
import java.time.Instant;
import org.hearthway.reminder.Beginning;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.stereotype.Component;

/** The demo begins when it is laid out, whatever its people did in the weeks before. */
@Component
@DemoProfile
class DemoBeginning implements Beginning {

    private final Instant start;

    DemoBeginning(@Qualifier("clock") Clock real) {
        start = real.instant();
    }

    @Override
    public Instant at() {
        return start;
    }
}
