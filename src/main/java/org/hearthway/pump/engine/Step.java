package org.hearthway.pump.engine;

import java.time.LocalTime;

/**
 * A stretch of a pump's day at one rate.
 *
 * @param from the pump's own time, in whole minutes
 * @param to the first minute that no longer belongs to it; earlier than {@code from} when it runs through midnight,
 *     equal to it when it fills the day
 * @param rate 0 to 100 micrograms per hour
 */
public record Step(LocalTime from, LocalTime to, DrugRate rate) {

    /** @throws org.hearthway.base.Invalid when a time has seconds or the rate is out of bounds */
    public Step {
        Minutes.of("from", from);
        Minutes.of("to", to);
        DrugRate.TYPED.computed(rate.perHour().exact());
    }

    /** A step in writing: {@code Step.of("22:00", "06:00", "5.0")} gives 5 micrograms per hour through the night. */
    public static Step of(String from, String to, String microgramsPerHour) {
        return new Step(LocalTime.parse(from), LocalTime.parse(to), DrugRate.microgramsPerHour(microgramsPerHour));
    }

    int start() {
        return Minutes.of("from", from);
    }

    int minutes() {
        var length = Math.floorMod(Minutes.of("to", to) - start(), Minutes.A_DAY);
        return length == 0 ? Minutes.A_DAY : length;
    }

    /** How long it runs. */
    public Elapsed length() {
        return Minutes.elapsed(minutes());
    }
}
