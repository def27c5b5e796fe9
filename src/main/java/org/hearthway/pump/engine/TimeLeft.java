package org.hearthway.pump.engine;

import java.time.Instant;
import java.util.Optional;

/**
 * How long a reservoir lasts from a moment on if nothing is changed: for a refill that was missed.
 *
 * @param volume what is in it
 * @param toAlarm until the alarm; nothing when it has sounded, empty when it never does
 * @param toEmpty until nothing is left; nothing when it is empty, empty when that never comes
 */
public record TimeLeft(
        Instant now, Volume volume, Optional<Elapsed> toAlarm, Optional<Elapsed> toEmpty, Derivation how) {

    /**
     * Reckons from a moment.
     *
     * @throws org.hearthway.base.Invalid when the moment lies before the fill
     */
    public static TimeLeft of(Reservoir reservoir, Instant now) {
        var working = new Derivation.Working();
        var volume = Usage.left(reservoir, now, working);
        tellDays(reservoir, volume, reservoir.programAt(now), working);
        return new TimeLeft(now, volume, reservoir.leftToAlarm(now), reservoir.leftToEmpty(now), working.done());
    }

    /** At a schedule right within a day: the times themselves follow the steps. */
    private static void tellDays(Reservoir reservoir, Volume volume, Program program, Derivation.Working working) {
        var rate = program.dosing().perDay(program.strength());
        if (rate.exact().signum() == 0) {
            return;
        }
        var daily = working.line(
                Formula.DAILY_VOLUME,
                Symbol.DAILY_VOLUME,
                rate.in(program.strength()).perDay(),
                Symbol.DAILY_DOSE.is(rate),
                Symbol.STRENGTH.is(program.strength()));
        var alarm = reservoir.pump().alarm();
        if (volume.compareTo(alarm) >= 0) {
            working.line(
                    Formula.DAYS_TO_ALARM,
                    Symbol.DAYS,
                    new Amount(volume.less(alarm).exact().divide(daily.exact()), Unit.DAYS),
                    Symbol.VOLUME.is(volume),
                    Symbol.ALARM_VOLUME.is(alarm),
                    Symbol.DAILY_VOLUME.is(daily));
        }
        working.line(
                Formula.DAYS_TO_EMPTY,
                Symbol.DAYS,
                new Amount(volume.exact().divide(daily.exact()), Unit.DAYS),
                Symbol.VOLUME.is(volume),
                Symbol.DAILY_VOLUME.is(daily));
    }
}
