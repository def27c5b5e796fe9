package org.hearthway.pump.events;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A fill was recorded; the pump must be refilled by {@code day}. */
public record RefillDateChanged(ChildId child, Viewer by, Instant at, LocalDate day, Bilingual words)
        implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return Optional.of(words);
    }
}
