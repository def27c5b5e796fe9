package org.hearthway.medicine;

import java.util.UUID;

/** Identifies a medicine of one child's list; random. */
public record MedicineId(UUID value) {

    /** A new identifier. */
    public static MedicineId random() {
        return new MedicineId(UUID.randomUUID());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
