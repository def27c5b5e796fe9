package org.hearthway.sign.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class OfficeHoursTests {

    private static final Predicate<LocalDate> WEEKDAYS =
            day -> day.getDayOfWeek().getValue() <= 5;
    private static final OfficeHours HOURS =
            new OfficeHours(LocalTime.of(8, 0), LocalTime.of(16, 30), ZoneId.of("America/New_York"), WEEKDAYS);

    @Test
    void beginsWithTheOpeningThatIsOnNow() {
        var now = Instant.parse("2026-03-12T14:00:00Z");
        var first = HOURS.from(now, 7).get(0);
        assertThat(first)
                .isEqualTo(new OfficeHours.Opening(
                        Instant.parse("2026-03-12T12:00:00Z"), Instant.parse("2026-03-12T20:30:00Z")));
        assertThat(first.holds(now)).isTrue();
    }

    @Test
    void isOpenFromTheFirstMinuteAndNoLongerAtTheLast() {
        var opening = HOURS.from(Instant.parse("2026-03-12T14:00:00Z"), 0).get(0);
        assertThat(opening.holds(opening.from())).isTrue();
        assertThat(opening.holds(opening.from().minusNanos(1))).isFalse();
        assertThat(opening.holds(opening.until())).isFalse();
        assertThat(HOURS.from(opening.until(), 0)).isEmpty();
    }

    @Test
    void goesOverTheWeekend() {
        var saturdayNight = Instant.parse("2026-03-14T06:00:00Z");
        assertThat(HOURS.from(saturdayNight, 7).get(0).from()).isEqualTo(Instant.parse("2026-03-16T12:00:00Z"));
    }

    // New York: clocks go forward on March 8, 2026 and back on November 1, 2026 (tz database)
    @Test
    void keepsToTheClinicsClockWhenTheClocksChange() {
        var everyDay = new OfficeHours(LocalTime.of(1, 0), LocalTime.of(4, 0), HOURS.zone(), day -> true);
        var spring = everyDay.from(Instant.parse("2026-03-08T05:00:00Z"), 0).get(0);
        assertThat(Duration.between(spring.from(), spring.until())).isEqualTo(Duration.ofHours(2));
        var autumn = everyDay.from(Instant.parse("2026-11-01T04:00:00Z"), 0).get(0);
        assertThat(Duration.between(autumn.from(), autumn.until())).isEqualTo(Duration.ofHours(4));
    }

    @Test
    void isEmptyWhenNoDayIsOpen() {
        var never = new OfficeHours(LocalTime.of(8, 0), LocalTime.of(16, 0), HOURS.zone(), day -> false);
        assertThat(never.from(Instant.parse("2026-03-12T14:00:00Z"), 31)).isEmpty();
    }

    @Test
    void looksAsFarAsAsked() {
        var mondays = new OfficeHours(
                HOURS.opens(), HOURS.closes(), HOURS.zone(), day -> day.getDayOfWeek() == DayOfWeek.MONDAY);
        assertThat(mondays.from(Instant.parse("2026-03-12T14:00:00Z"), 31)).hasSize(4);
    }
}
