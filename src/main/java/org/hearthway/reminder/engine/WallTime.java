package org.hearthway.reminder.engine;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** From a wall time to the instant: the one place where a reminder's instant is made. */
public final class WallTime {

    private WallTime() {}

    /**
     * The instant of a wall time. A time that does not exist (clocks go forward) moves later by the length of the gap;
     * one that exists twice (clocks go back) is the first of the two. RFC 5545 section 3.3.5 and java.time agree.
     */
    public static Instant instant(LocalDateTime wall, ZoneId zone) {
        return wall.atZone(zone).toInstant();
    }
}
