package org.hearthway.stimulator.events;

import java.time.Instant;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A second person read the same figures on the device: the reading counts from now on. */
public record StimulatorReadingConfirmed(ChildId child, Viewer by, Instant at, Bilingual words) implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return Optional.of(words);
    }
}
