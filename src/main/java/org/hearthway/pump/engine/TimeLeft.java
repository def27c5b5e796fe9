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
        var node = new Reservoir.Node(now, volume, reservoir.programAt(now));
        Usage.days(Formula.DAYS_TO_ALARM, node, reservoir.pump().alarm(), working);
        Usage.days(Formula.DAYS_TO_EMPTY, node, Volume.NONE, working);
        return new TimeLeft(now, volume, reservoir.leftToAlarm(now), reservoir.leftToEmpty(now), working.done());
    }
}
