package org.hearthway.path.events;

import java.time.Instant;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A path was begun or a stage date changed; the words say which and to when. */
public record PathChanged(ChildId child, Viewer by, Instant at, Bilingual words) implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return Optional.of(words);
    }
}
