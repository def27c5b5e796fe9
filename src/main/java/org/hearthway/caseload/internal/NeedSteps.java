package org.hearthway.caseload.internal;

import java.time.Clock;
import java.time.LocalDate;
import org.hearthway.base.AccountId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.caseload.events.NeedWorked;
import org.hearthway.sign.events.ReportRead;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Keeps each step of the work on an item, and tells it to whoever listens. */
@Component
class NeedSteps {

    private final NeedItems items;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    NeedSteps(NeedItems items, Clock clock, ApplicationEventPublisher events) {
        this.items = items;
        this.clock = clock;
        this.events = events;
    }

    /** Keeps a step that was just made on the row's version. */
    void worked(Viewer viewer, NeedItems.Row row, String step, @Nullable LocalDate until, String words) {
        var now = clock.instant();
        items.step(row.id(), row.version() + 1, step, viewer.tag(), now, until, words);
        events.publishEvent(new NeedWorked(row.child(), viewer, now, row.id(), step));
    }

    /** Marks an item as looked at. */
    void seen(Viewer viewer, AccountId by, NeedItems.Row row) {
        items.see(row, by, clock.instant(), row.version());
        worked(viewer, row, "SEEN", null, "");
    }

    /** A report that is read anywhere is thereby seen here. */
    @EventListener
    void on(ReportRead read) {
        if (!(read.by() instanceof Viewer.Person reader)) {
            return;
        }
        items.openOf(read.child()).stream()
                .filter(row -> row.cause().rule() == Rule.SIGN)
                .filter(row -> row.cause().subject().equals(read.key().toString()))
                .filter(row -> row.seenBy().isEmpty())
                .forEach(row -> seen(reader, reader.account(), row));
    }
}
