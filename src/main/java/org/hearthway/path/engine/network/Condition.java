package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;

/**
 * One thing that has to hold. Its name is what a conflict tells; conditions that belong together, such as the two
 * sides of one rule, share it.
 */
public sealed interface Condition {

    /** The rule's name, the caller's own. */
    String rule();

    /**
     * One point lies so long after another, counted in calendar periods from the first; a negative period counts
     * backwards.
     *
     * @param least smallest gap, if there is one
     * @param most largest gap, if there is one
     */
    record Gap(String rule, String from, String to, Optional<Period> least, Optional<Period> most)
            implements Condition {}

    /** A point lies between two days, both included; on one day when they are the same. */
    record Between(String rule, String point, LocalDate first, LocalDate last) implements Condition {

        /** A point lies on one day. */
        public static Between on(String rule, String point, LocalDate day) {
            return new Between(rule, point, day, day);
        }
    }

    /** A point lies on one of these days. */
    record On(String rule, String point, Days days) implements Condition {}

    /**
     * Two points lie at least so many days apart, whichever comes first.
     *
     * @param days 1 or more
     */
    record Apart(String rule, String one, String other, int days) implements Condition {

        public Apart {
            if (days < 1) {
                throw new IllegalArgumentException("things lie at least one day apart");
            }
        }
    }
}
