package org.hearthway.program.events;

import java.time.Instant;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A new version of a home program was saved; the words say what is different. */
public record ProgramSaved(ChildId child, Viewer by, Instant at, int version, Bilingual words) implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return Optional.of(words);
    }
}
