package org.hearthway.base;

import java.util.Optional;
import java.util.UUID;

/** Identifies a child; random, says nothing about the child. */
public record ChildId(UUID value) {

    /** A new identifier from a strong random source. */
    public static ChildId random() {
        return new ChildId(UUID.randomUUID());
    }

    /** Reads the text form as it stands in an address; empty when it is not one. */
    public static Optional<ChildId> parse(String text) {
        try {
            return Optional.of(new ChildId(UUID.fromString(text)));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
