package org.hearthway.reminder.engine;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;

/**
 * The hours in which a family may be written to, by the family's own clock; the rest of the day is quiet.
 *
 * @param from the first moment, included
 * @param until the end, left out; later than {@code from}
 */
public record SendingHours(LocalTime from, LocalTime until) {

    /** @throws IllegalArgumentException when the end does not lie after the beginning */
    public SendingHours {
        if (!until.isAfter(from)) {
            throw new IllegalArgumentException("sending hours end before they begin");
        }
    }

    /** Whether a message may leave at this instant. */
    public boolean allow(Instant instant, ZoneId zone) {
        return contain(LocalDateTime.ofInstant(instant, zone));
    }

    private boolean contain(LocalDateTime wall) {
        return !wall.toLocalTime().isBefore(from) && wall.toLocalTime().isBefore(until);
    }

    /** The instant itself when it is allowed, else the next beginning of the hours. */
    public Instant onOrAfter(Instant instant, ZoneId zone) {
        var wall = LocalDateTime.ofInstant(instant, zone);
        if (contain(wall)) {
            return instant;
        }
        var early = wall.toLocalTime().isBefore(from);
        var next = WallTime.instant(
                (early ? wall.toLocalDate() : wall.toLocalDate().plusDays(1)).atTime(from), zone);
        // where a zone jumps over the beginning of the hours, the moment after the jump may be quiet again
        return allow(next, zone) ? next : onOrAfter(next, zone);
    }
}
