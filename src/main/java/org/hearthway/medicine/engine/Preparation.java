package org.hearthway.medicine.engine;

import java.util.Locale;

/**
 * What a toxin's units belong to: the name on the vial. Capitals and spaces apart, two names are two preparations.
 *
 * @param name not blank
 */
public record Preparation(String name) {

    /** @throws IllegalArgumentException for a blank name */
    public Preparation {
        name = name.strip();
        if (name.isEmpty()) {
            throw new IllegalArgumentException("a preparation without a name");
        }
    }

    private String plain() {
        return name.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Preparation another && plain().equals(another.plain());
    }

    @Override
    public int hashCode() {
        return plain().hashCode();
    }
}
