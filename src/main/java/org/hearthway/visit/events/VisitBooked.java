package org.hearthway.visit.events;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A visit was booked. */
public record VisitBooked(ChildId child, Viewer by, Instant at, UUID visit, Bilingual words) implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return Optional.of(words);
    }
}
