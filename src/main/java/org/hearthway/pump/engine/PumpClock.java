package org.hearthway.pump.engine;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The clock inside a pump: it stands as it was set at the last programming and follows no daylight saving.
 *
 * @param offset how far it is ahead of UTC
 */
public record PumpClock(ZoneOffset offset) {

    /**
     * A change of local time that the clock did not follow.
     *
     * @param since when it was
     * @param by how far steps run off from then on: positive, a step that was set for 06:00 runs at 07:00; nothing when
     *     they are right again
     */
    public record Shift(Instant since, Duration by) {}

    /** A clock that was set to the local time of a place. */
    public static PumpClock setAt(Instant programmed, ZoneId zone) {
        return new PumpClock(zone.getRules().getOffset(programmed));
    }

    /** What it shows. */
    public LocalDateTime shows(Instant at) {
        return LocalDateTime.ofInstant(at, offset);
    }

    /** The local time of a place when it shows a time. */
    public ZonedDateTime local(LocalDateTime shown, ZoneId zone) {
        return shown.toInstant(offset).atZone(zone);
    }

    /** How far local time is ahead of it; nothing when both agree. */
    public Duration off(Instant at, ZoneId zone) {
        return Duration.ofSeconds(zone.getRules().getOffset(at).getTotalSeconds() - offset.getTotalSeconds());
    }

    /** Every change of local time after a programming and not after another moment, oldest first. */
    public List<Shift> shifts(Instant programmed, Instant until, ZoneId zone) {
        var shifts = new ArrayList<Shift>();
        var next = zone.getRules().nextTransition(programmed);
        while (next != null && !next.getInstant().isAfter(until)) {
            shifts.add(new Shift(next.getInstant(), off(next.getInstant(), zone)));
            next = zone.getRules().nextTransition(next.getInstant());
        }
        return shifts;
    }

    BigFraction seconds(Instant at) {
        return Exact.seconds(at).add(offset.getTotalSeconds());
    }
}
