package org.hearthway.program.events;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A family said how an exercise went. */
public record SessionLogged(
        ChildId child, Viewer by, Instant at, UUID key, String exercise, LocalDate day, Optional<Integer> pain)
        implements Change {

    /** From this pain on (0 to 10) a call comes first. Severe band of common 0 to 10 scales; clinic practice. */
    public static final int SEVERE_PAIN = 7;

    /** Whether the pain is severe. */
    public boolean isSevere() {
        return pain.filter(p -> p >= SEVERE_PAIN).isPresent();
    }
}
