package org.hearthway.equipment.events;

import java.time.Instant;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A series of casts was planned, changed, or had a cast put on or taken off. */
public record CastRecorded(ChildId child, Viewer by, Instant at, Bilingual words) implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return Optional.of(words);
    }
}
