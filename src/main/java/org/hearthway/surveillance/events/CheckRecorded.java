package org.hearthway.surveillance.events;

import java.time.Instant;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A check of hips or spine was recorded, corrected or taken back; the dates that follow from it are others now. */
public record CheckRecorded(ChildId child, Viewer by, Instant at, Bilingual words) implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return Optional.of(words);
    }
}
