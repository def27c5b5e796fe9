package org.hearthway.surveillance.engine;

import java.time.Period;
import java.util.Optional;

/** One part of a rhythm. */
public sealed interface Step {

    /**
     * The first check, at an age; any check answers it, and what repeats counts from there.
     *
     * @param from youngest age
     * @param until by this age
     */
    record First(Period from, Period until) implements Step {}

    /**
     * A check at an age.
     *
     * @param from youngest age
     * @param until by this age
     */
    record Age(Period from, Period until) implements Step {}

    /**
     * A check so long after the first one.
     *
     * @param gap how long
     */
    record AfterFirst(Period gap) implements Step {}

    /**
     * Again and again, each counted from the check before.
     *
     * @param months calendar months between two, at least 1
     * @param during how long from the first check on; empty without an end
     * @param untilStable whether it ends once the team calls the last check stable
     */
    record Every(int months, Optional<Period> during, boolean untilStable) implements Step {
        public Every {
            if (months < 1) {
                throw new IllegalArgumentException("months " + months + " below 1");
            }
        }
    }
}
