package org.hearthway.caseload.events;

import java.time.Instant;
import java.util.UUID;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Somebody worked an item that needs a look; {@code step} is TAKEN, SEEN, SET_ASIDE, RESUMED or CLOSED. */
public record NeedWorked(ChildId child, Viewer by, Instant at, UUID item, String step) implements Change {

    @Override
    public String kind() {
        return Change.super.kind() + "/" + step;
    }
}
