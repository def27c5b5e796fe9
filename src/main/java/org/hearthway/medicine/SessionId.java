package org.hearthway.medicine;

import java.util.UUID;

/** Identifies a toxin session of one child; random. */
public record SessionId(UUID value) {

    /** A new identifier. */
    public static SessionId random() {
        return new SessionId(UUID.randomUUID());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
