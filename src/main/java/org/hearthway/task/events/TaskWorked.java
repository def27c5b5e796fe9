package org.hearthway.task.events;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * A task went on: {@code step} is CHANGED, TICKED, DONE, NOT_NEEDED, SET_ASIDE or TAKEN_BACK. The family is told when
 * somebody else moved or ended what it was asked.
 */
public record TaskWorked(ChildId child, Viewer by, Instant at, UUID task, String step, Optional<Bilingual> forFamily)
        implements Change {

    @Override
    public String kind() {
        return Change.super.kind() + "/" + step;
    }
}
