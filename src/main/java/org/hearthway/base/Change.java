package org.hearthway.base;

import java.time.Instant;
import java.util.Optional;

/**
 * Something that happened to a child's plan, program, dose or visit: an event record named in the past tense.
 * Plain synchronous listeners hear it inside the transaction that made it: the audit trail, "what changed", the outbox.
 */
public interface Change {

    /** Whose plan changed. */
    ChildId child();

    /** On whose behalf. */
    Viewer by();

    /** When. */
    Instant at();

    /** One sentence for the family's "what changed", or empty when it is not for them. */
    default Optional<Bilingual> forFamily() {
        return Optional.empty();
    }

    /** Kind for the audit trail: the record's name unless said otherwise. */
    default String kind() {
        return getClass().getSimpleName();
    }
}
