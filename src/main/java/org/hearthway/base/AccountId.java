package org.hearthway.base;

import java.util.Optional;
import java.util.UUID;

/** Identifies an account; random, says nothing about the person. */
public record AccountId(UUID value) {

    /** A new identifier from a strong random source. */
    public static AccountId random() {
        return new AccountId(UUID.randomUUID());
    }

    /** Reads the text form as it stands in an address; empty when it is not one. */
    public static Optional<AccountId> parse(String text) {
        try {
            return Optional.of(new AccountId(UUID.fromString(text)));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
