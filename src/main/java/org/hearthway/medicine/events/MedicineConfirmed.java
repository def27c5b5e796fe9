package org.hearthway.medicine.events;

import java.time.Instant;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A second person checked a medicine as it was written; the family sees it from now on. */
public record MedicineConfirmed(ChildId child, Viewer by, Instant at, Bilingual words) implements Change {

    @Override
    public Optional<Bilingual> forFamily() {
        return Optional.of(words);
    }
}
