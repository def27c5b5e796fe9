package org.hearthway.access.internal;

import java.util.Set;

/** Which field of a caregiver is shown to whom: the whole decision in one table. What does not stand here is hidden. */
final class CircleTable {

    /** What is known of a caregiver besides the name. */
    enum Field {
        RELATION,
        PHONE,
        EMAIL,
        LANGUAGE,
        ZONE,
        /** Authority, address, interpreter, nights, what is shared, the team's note. */
        HOME
    }

    /** From where somebody looks at a caregiver. */
    enum Sight {
        TEAM,
        /** The caregiver looks at what the clinic has of it. */
        OWN,
        /** Another caregiver of the child. */
        OTHER,
        /** Another caregiver, with whom this one shares the telephone number. */
        SHARED_WITH
    }

    private CircleTable() {}

    static Set<Field> shown(Sight sight) {
        return switch (sight) {
            case TEAM -> Set.of(Field.values());
            case OWN -> Set.of(Field.RELATION, Field.PHONE, Field.EMAIL, Field.LANGUAGE, Field.ZONE);
            case OTHER -> Set.of(Field.RELATION);
            case SHARED_WITH -> Set.of(Field.RELATION, Field.PHONE);
        };
    }
}
