package org.hearthway.pump.events;

import java.time.Instant;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * A second person typed the same figures; the entry counts.
 *
 * @param words the next refill in words, when its day is another now
 */
public record PumpEntryChecked(ChildId child, Viewer by, Instant at, Optional<Bilingual> words) implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return words;
    }
}
