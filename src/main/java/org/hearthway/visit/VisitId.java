package org.hearthway.visit;

import java.util.UUID;

/** Identifies a visit. */
public record VisitId(UUID value) {

    /** A new identifier. */
    public static VisitId random() {
        return new VisitId(UUID.randomUUID());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
