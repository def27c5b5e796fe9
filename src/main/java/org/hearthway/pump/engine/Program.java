package org.hearthway.pump.engine;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * How a pump runs from one programming to the next.
 *
 * @param from when it was programmed
 * @param strength what the pump is told of the drug in it
 * @param dosing what it is to give
 * @param clock its own clock, as it was set
 */
public record Program(Instant from, Concentration strength, Dosing dosing, PumpClock clock) {

    /** A programming in a place, whose local time the pump's clock is set to. */
    public static Program set(Instant from, ZoneId zone, Concentration strength, Dosing dosing) {
        return new Program(from, strength, dosing, PumpClock.setAt(from, zone));
    }

    /** What it gives between two moments, if there is enough. */
    public Mass given(Instant from, Instant to) {
        return dosing.pace(strength).given(clock.seconds(from), clock.seconds(to));
    }

    /** What it takes from the reservoir between two moments, if there is enough. */
    public Volume used(Instant from, Instant to) {
        return given(from, to).in(strength);
    }

    /** What it gives at a moment. */
    public DrugRate rate(Instant at) {
        return dosing.pace(strength).at(clock.seconds(at));
    }

    /**
     * How its steps run off in local time at a moment, and since when: until the next programming. Empty when they are
     * right, or when it knows no time of day.
     */
    public Optional<PumpClock.Shift> shift(Instant at, ZoneId zone) {
        var shifts = shifts(at, zone);
        return shifts.isEmpty()
                ? Optional.empty()
                : Optional.of(shifts.get(shifts.size() - 1))
                        .filter(last -> !last.by().isZero());
    }

    /** Every change of local time from this programming to a moment, oldest first, if it knows a time of day. */
    public List<PumpClock.Shift> shifts(Instant until, ZoneId zone) {
        return dosing.followsTheClock() ? clock.shifts(from, until, zone) : List.of();
    }

    Optional<Elapsed> until(Instant since, Volume used) {
        return dosing.pace(strength)
                .until(clock.seconds(since), used.at(strength))
                .map(Elapsed::seconds);
    }
}
