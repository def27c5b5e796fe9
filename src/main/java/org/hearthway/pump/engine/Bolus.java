package org.hearthway.pump.engine;

import java.time.LocalTime;

/**
 * A dose that a schedule gives in a short time.
 *
 * @param at when it begins, by the pump's own clock, in whole minutes; it may run through midnight
 * @param dose 1 to 500 micrograms
 * @param minutes how long it runs, {@value #LEAST_MINUTES} to {@value #MOST_MINUTES}
 */
public record Bolus(LocalTime at, Mass dose, int minutes) {

    /** The shortest. */
    public static final int LEAST_MINUTES = 1;

    /** The longest; what runs longer is a step. Common practice, no source. */
    public static final int MOST_MINUTES = 720;

    /** @throws org.hearthway.base.Invalid when a bound is broken */
    public Bolus {
        Minutes.of("at", at);
        Mass.TYPED.computed(dose.exact());
        Bounds.whole("minutes", minutes, LEAST_MINUTES, MOST_MINUTES, Unit.MINUTES);
    }

    /** A bolus in writing: {@code Bolus.of("14:00", "30", 30)} gives 30 micrograms in half an hour. */
    public static Bolus of(String at, String micrograms, int minutes) {
        return new Bolus(LocalTime.parse(at), Mass.micrograms(micrograms), minutes);
    }

    int start() {
        return Minutes.of("at", at);
    }

    /** How fast it runs. */
    public DrugRate rate() {
        return new DrugRate(dose.exact().multiply(Minutes.A_DAY).divide(minutes));
    }
}
