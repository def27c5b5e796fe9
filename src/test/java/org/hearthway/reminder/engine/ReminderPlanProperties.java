package org.hearthway.reminder.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.reminder.engine.Occasion.Appointment;

class ReminderPlanProperties {

    private static final SendingHours HOURS = new SendingHours(LocalTime.of(8, 0), LocalTime.of(21, 0));
    private static final ReminderPlan PLAN = new ReminderPlan(HOURS, Duration.ofHours(2), Duration.ofDays(2));
    private static final Rule RULE = new Rule(
            "all",
            IntStream.of(14, 7, 3, 1, 0)
                    .boxed()
                    .flatMap(days -> java.util.stream.Stream.of(Way.values())
                            .map(way -> new Step(days, Optional.empty(), way, false, Map.of(Standing.OPEN, "t"))))
                    .toList(),
            "late");

    @Provide
    Arbitrary<ZoneId> zones() {
        return Arbitraries.of(
                        "America/New_York",
                        "Europe/Berlin",
                        "Australia/Lord_Howe",
                        "Pacific/Apia",
                        "Africa/Casablanca",
                        "UTC",
                        "Asia/Kathmandu",
                        "America/St_Johns",
                        "Pacific/Honolulu")
                .map(ZoneId::of);
    }

    @Provide
    Arbitrary<LocalDateTime> walls() {
        var first = LocalDateTime.parse("2011-12-20T00:00");
        return Arbitraries.integers().between(0, 16 * 366 * 24 * 60).map(first::plusMinutes);
    }

    private static List<Planned> plan(LocalDateTime wall, ZoneId clinic, ZoneId family, Instant now) {
        return PLAN.of(RULE, new Appointment(wall, clinic), Standing.OPEN, family, now);
    }

    @Property
    void noMailLeavesInAQuietHour(
            @ForAll("walls") LocalDateTime wall, @ForAll("zones") ZoneId clinic, @ForAll("zones") ZoneId family) {
        assertThat(plan(wall, clinic, family, Instant.MIN))
                .filteredOn(p -> p.way() == Way.SEND)
                .allSatisfy(
                        p -> assertThat(LocalDateTime.ofInstant(p.due(), family).toLocalTime())
                                .isAfterOrEqualTo(LocalTime.of(8, 0))
                                .isBefore(LocalTime.of(21, 0)));
    }

    @Property
    void noMailLeavesOrIsWorthSendingInTheTwoHoursBeforeTheVisit(
            @ForAll("walls") LocalDateTime wall, @ForAll("zones") ZoneId clinic, @ForAll("zones") ZoneId family) {
        var last = WallTime.instant(wall, clinic).minus(Duration.ofHours(2));
        assertThat(plan(wall, clinic, family, Instant.MIN))
                .filteredOn(p -> p.way() == Way.SEND)
                .allSatisfy(p -> {
                    assertThat(p.due()).isBeforeOrEqualTo(last);
                    assertThat(p.usefulUntil()).isBetween(p.due(), last);
                });
    }

    @Property
    void nothingIsDueBeforeNowAndNoReminderAfterTheVisitBegan(
            @ForAll("walls") LocalDateTime wall,
            @ForAll("zones") ZoneId clinic,
            @ForAll("zones") ZoneId family,
            @ForAll @IntRange(min = -40_000, max = 2_000) int minutes) {
        var start = WallTime.instant(wall, clinic);
        var now = start.plus(Duration.ofMinutes(minutes));
        assertThat(plan(wall, clinic, family, now)).allSatisfy(p -> {
            assertThat(p.due()).isAfterOrEqualTo(now).isBefore(start);
            assertThat(p.meant()).isBeforeOrEqualTo(p.due());
        });
    }

    @Property
    void theSameQuestionHasTheSameAnswerAndALaterOneOnlyFewerMails(
            @ForAll("walls") LocalDateTime wall,
            @ForAll("zones") ZoneId zone,
            @ForAll @IntRange(max = 30_000) int minutes) {
        var early = plan(wall, zone, zone, Instant.MIN);
        assertThat(plan(wall, zone, zone, Instant.MIN)).isEqualTo(early);
        var later = plan(wall, zone, zone, WallTime.instant(wall, zone).minus(Duration.ofMinutes(minutes)));
        assertThat(later.stream().filter(p -> p.way() == Way.SEND))
                .allSatisfy(mail -> assertThat(early).contains(mail));
    }

    @Property
    void waitsGrowAndStayWithinTheirBounds(@ForAll @IntRange(min = 1, max = 10_000) int tries, @ForAll long seed) {
        var backOff = new BackOff(Duration.ofMinutes(1), Duration.ofHours(1));
        var wait = backOff.after(tries, seed);
        assertThat(wait).isLessThanOrEqualTo(Duration.ofHours(1)).isGreaterThanOrEqualTo(Duration.ofSeconds(48));
        assertThat(backOff.after(tries, seed)).isEqualTo(wait);
        if (tries <= 6) {
            assertThat(backOff.after(tries + 1, seed)).isGreaterThan(wait);
        }
    }
}
