package org.hearthway.reminder.engine;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/** What a reminder is about: a visit at a time, or a day by which something must be done. */
public sealed interface Occasion {

    /**
     * The occasion on somebody's own clock.
     *
     * @param zone where that clock stands
     */
    LocalDateTime on(ZoneId zone);

    /** The instant it begins, when it has a time. */
    Optional<Instant> starts();

    /** A visit: wall time at the clinic. A family in another zone is reminded by its own clock. */
    record Appointment(LocalDateTime start, ZoneId zone) implements Occasion {
        @Override
        public LocalDateTime on(ZoneId other) {
            return LocalDateTime.ofInstant(WallTime.instant(start, zone), other);
        }

        @Override
        public Optional<Instant> starts() {
            return Optional.of(WallTime.instant(start, zone));
        }
    }

    /** The last day for something; the same date wherever one is. */
    record Deadline(LocalDate day, LocalTime at) implements Occasion {
        @Override
        public LocalDateTime on(ZoneId zone) {
            return day.atTime(at);
        }

        @Override
        public Optional<Instant> starts() {
            return Optional.empty();
        }
    }
}
