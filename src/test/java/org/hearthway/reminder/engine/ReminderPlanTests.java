package org.hearthway.reminder.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.reminder.engine.Occasion.Appointment;
import org.hearthway.reminder.engine.Occasion.Deadline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Expected instants were computed with java.time and a second program on the tz database 2025b. That 7 days and 1 day
 * are chosen is common practice: trials found no difference by timing (Guy R and others, Health Serv Res 2012).
 */
class ReminderPlanTests {

    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    private static final SendingHours HOURS = new SendingHours(LocalTime.of(8, 0), LocalTime.of(21, 0));
    private static final ReminderPlan PLAN = new ReminderPlan(HOURS, Duration.ofHours(2), Duration.ofDays(2));
    private static final Instant LONG_BEFORE = Instant.parse("2000-01-01T00:00:00Z");

    private static Step send(int days) {
        return new Step(
                days,
                Optional.empty(),
                Way.SEND,
                false,
                Map.of(Standing.OPEN, "asks", Standing.CONFIRMED, "reminds", Standing.ASKED_TO_MOVE, "waits"));
    }

    private static Rule usual() {
        return new Rule("usual", List.of(send(7), send(1)), "call-too-late");
    }

    private static Rule refill() {
        var unconfirmed = Map.of(Standing.OPEN, "call-to-book", Standing.BOOKED, "call-to-confirm");
        var always = Map.of(Standing.OPEN, "passed", Standing.BOOKED, "passed", Standing.CONFIRMED, "passed");
        var mails = java.util.stream.Stream.of(14, 7, 3, 1)
                .map(days -> new Step(days, Optional.empty(), Way.SEND, false, Map.of(Standing.OPEN, "to-book")));
        var calls = java.util.stream.Stream.of(
                new Step(7, Optional.empty(), Way.CALL, false, unconfirmed),
                new Step(-1, Optional.of(LocalTime.MIDNIGHT), Way.CALL, true, always));
        return new Rule("refill", java.util.stream.Stream.concat(mails, calls).toList(), "call-too-late");
    }

    private static List<Instant> dues(Rule rule, Occasion occasion, ZoneId zone, Instant now) {
        return PLAN.of(rule, occasion, Standing.OPEN, zone, now).stream()
                .map(Planned::due)
                .toList();
    }

    private static Appointment at(String wall) {
        return new Appointment(LocalDateTime.parse(wall), NEW_YORK);
    }

    private static Instant utc(String text) {
        return Instant.parse(text);
    }

    /** Window of 8 to 21 hours: 47 CFR 64.1200(c)(1), taken over for care messages as common practice. */
    @ParameterizedTest
    @CsvSource({
        "2026-06-10T06:10:00, 2026-06-10T08:00:00",
        "2026-06-10T07:59:59, 2026-06-10T08:00:00",
        "2026-06-10T08:00:00, 2026-06-10T08:00:00",
        "2026-06-10T20:59:59, 2026-06-10T20:59:59",
        "2026-06-10T21:00:00, 2026-06-11T08:00:00",
        "2026-06-10T23:40:00, 2026-06-11T08:00:00",
        "2026-03-07T21:30:00, 2026-03-08T08:00:00"
    })
    void movesAQuietHourToTheNextMorning(LocalDateTime due, LocalDateTime sent) {
        assertThat(HOURS.onOrAfter(WallTime.instant(due, NEW_YORK), NEW_YORK))
                .isEqualTo(WallTime.instant(sent, NEW_YORK));
    }

    @Test
    void crossesTheNightOfTheSpringChangeInNineAndAHalfHours() {
        var evening = WallTime.instant(LocalDateTime.parse("2026-03-07T21:30"), NEW_YORK);
        var morning = HOURS.onOrAfter(evening, NEW_YORK);
        assertThat(morning).isEqualTo(utc("2026-03-08T12:00:00Z"));
        assertThat(Duration.between(evening, morning)).isEqualTo(Duration.ofMinutes(570));
    }

    @Test
    void remindsSevenDaysAndOneDayBeforeAtTheHourOfTheVisit() {
        assertThat(dues(usual(), at("2026-06-18T14:30"), NEW_YORK, LONG_BEFORE))
                .containsExactly(utc("2026-06-11T18:30:00Z"), utc("2026-06-17T18:30:00Z"));
    }

    @Test
    void leavesOutWhatIsPastWhenTheVisitIsBookedLate() {
        assertThat(dues(usual(), at("2026-06-18T14:30"), NEW_YORK, utc("2026-06-13T15:00:00Z")))
                .containsExactly(utc("2026-06-17T18:30:00Z"));
        assertThat(dues(usual(), at("2026-06-18T14:30"), NEW_YORK, utc("2026-06-17T18:30:00Z")))
                .containsExactly(utc("2026-06-17T18:30:00Z"));
        assertThat(dues(usual(), at("2026-06-18T14:30"), NEW_YORK, utc("2026-06-17T18:30:01Z")))
                .isEmpty();
    }

    /** TM1. */
    @ParameterizedTest(name = "{0}: a day before is {1}")
    @CsvSource({
        // the clocks go forward on March 8, back on November 1: 23 and 25 hours, never 24
        "2026-03-08T09:00, 2026-03-07T14:00:00Z",
        "2026-11-01T09:00, 2026-10-31T13:00:00Z",
        "2026-06-18T14:30, 2026-06-17T18:30:00Z"
    })
    void countsCalendarDaysAndNotHours(String visit, Instant reminder) {
        var rule = new Rule("one", List.of(send(1)), "call-too-late");
        assertThat(dues(rule, at(visit), NEW_YORK, LONG_BEFORE)).containsExactly(reminder);
    }

    @Test
    void keepsTheHourOverTheSpringChange() {
        assertThat(dues(usual(), at("2026-03-15T10:00"), NEW_YORK, LONG_BEFORE))
                .first()
                .isEqualTo(utc("2026-03-08T14:00:00Z"));
    }

    /** TM2. */
    @ParameterizedTest(name = "{0} {1} is {2}")
    @CsvSource({
        "America/New_York,    2026-03-08T02:30, 2026-03-08T07:30:00Z",
        "America/New_York,    2026-11-01T01:30, 2026-11-01T05:30:00Z",
        "Europe/London,       2026-03-29T01:30, 2026-03-29T01:30:00Z",
        "Europe/London,       2026-10-25T01:30, 2026-10-25T00:30:00Z",
        "Europe/Berlin,       2026-03-29T02:30, 2026-03-29T01:30:00Z",
        "Europe/Berlin,       2026-10-25T02:30, 2026-10-25T00:30:00Z",
        "Australia/Lord_Howe, 2026-10-04T02:15, 2026-10-03T15:45:00Z",
        "Australia/Lord_Howe, 2026-04-05T01:45, 2026-04-04T14:45:00Z",
        "Pacific/Apia,        2011-12-30T09:00, 2011-12-30T19:00:00Z",
        "Africa/Casablanca,   2026-03-22T02:30, 2026-03-22T02:30:00Z",
        "UTC,                 2026-03-08T02:30, 2026-03-08T02:30:00Z"
    })
    void movesATimeInTheGapLaterAndTakesTheFirstOfTwo(ZoneId zone, LocalDateTime wall, Instant instant) {
        assertThat(WallTime.instant(wall, zone)).isEqualTo(instant);
    }

    /** TM1. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "America/New_York,    2026-03-08T07:00:00Z, 2026-11-01T06:00:00Z",
        "America/Chicago,     2026-03-08T08:00:00Z, 2026-11-01T07:00:00Z",
        "Europe/London,       2026-03-29T01:00:00Z, 2026-10-25T01:00:00Z",
        "Europe/Madrid,       2026-03-29T01:00:00Z, 2026-10-25T01:00:00Z",
        "Australia/Sydney,    2026-10-03T16:00:00Z, 2026-04-04T16:00:00Z"
    })
    void remindsAtTheSameHourBeforeAndAfterEveryChange(ZoneId zone, Instant gap, Instant overlap) {
        for (var change : List.of(gap, overlap)) {
            var day = LocalDateTime.ofInstant(change, zone).toLocalDate();
            var visit = new Appointment(day.plusDays(3).atTime(10, 15), zone);
            for (var due : dues(usual(), visit, zone, LONG_BEFORE)) {
                assertThat(LocalDateTime.ofInstant(due, zone).toLocalTime()).isEqualTo(LocalTime.of(10, 15));
            }
            assertThat(zone.getRules().getOffset(change))
                    .isNotEqualTo(zone.getRules().getOffset(change.minusSeconds(1)));
        }
    }

    @Test
    void remindsAFamilyInAnotherZoneByItsOwnClock() {
        var berlin = ZoneId.of("Europe/Berlin");
        // 16:00 in New York is 22:00 in Berlin: quiet there, so the next morning, which is still in time
        assertThat(dues(usual(), at("2026-06-18T16:00"), berlin, LONG_BEFORE))
                .containsExactly(utc("2026-06-12T06:00:00Z"), utc("2026-06-18T06:00:00Z"));
    }

    @Test
    void callsInsteadWhenTheMorningIsTooCloseToTheVisit() {
        var evening = new Rule(
                "evening",
                List.of(new Step(1, Optional.of(LocalTime.of(22, 0)), Way.SEND, false, Map.of(Standing.OPEN, "asks"))),
                "call-too-late");
        assertThat(PLAN.of(evening, at("2026-06-18T09:59"), Standing.OPEN, NEW_YORK, LONG_BEFORE))
                .singleElement()
                .satisfies(call -> {
                    assertThat(call.way()).isEqualTo(Way.CALL);
                    assertThat(call.text()).isEqualTo("call-too-late");
                    assertThat(call.due()).isEqualTo(utc("2026-06-18T02:00:00Z"));
                });
        assertThat(PLAN.of(evening, at("2026-06-18T10:00"), Standing.OPEN, NEW_YORK, LONG_BEFORE))
                .singleElement()
                .satisfies(mail -> {
                    assertThat(mail.way()).isEqualTo(Way.SEND);
                    assertThat(mail.due()).isEqualTo(utc("2026-06-18T12:00:00Z"));
                    assertThat(mail.usefulUntil()).isEqualTo(mail.due());
                });
    }

    /** Escalation of a refill: common practice, no source. */
    @Test
    void escalatesARefillThatNobodyBooked() {
        var byDay = new Deadline(LocalDate.of(2026, 6, 18), LocalTime.of(9, 0));
        var planned = PLAN.of(refill(), byDay, Standing.OPEN, NEW_YORK, LONG_BEFORE);
        assertThat(planned)
                .extracting(p -> p.way() + " " + LocalDateTime.ofInstant(p.due(), NEW_YORK) + (p.urgent() ? " !" : ""))
                .containsExactly(
                        "SEND 2026-06-04T09:00",
                        "CALL 2026-06-11T09:00",
                        "SEND 2026-06-11T09:00",
                        "SEND 2026-06-15T09:00",
                        "SEND 2026-06-17T09:00",
                        "CALL 2026-06-19T00:00 !");
    }

    @Test
    void stopsTheMailsWhenBookedAndTheCallWhenConfirmedButKeepsTheAlarmOfTheDayAfter() {
        var byDay = new Deadline(LocalDate.of(2026, 6, 18), LocalTime.of(9, 0));
        assertThat(PLAN.of(refill(), byDay, Standing.BOOKED, NEW_YORK, LONG_BEFORE))
                .extracting(Planned::text)
                .containsExactly("call-to-confirm", "passed");
        assertThat(PLAN.of(refill(), byDay, Standing.CONFIRMED, NEW_YORK, LONG_BEFORE))
                .extracting(Planned::text)
                .containsExactly("passed");
    }

    @Test
    void makesACallDueAtOnceWhenItsTimeHasPassed() {
        var byDay = new Deadline(LocalDate.of(2026, 6, 18), LocalTime.of(9, 0));
        var now = utc("2026-06-20T15:00:00Z");
        assertThat(PLAN.of(refill(), byDay, Standing.OPEN, NEW_YORK, now))
                .hasSize(2)
                .allSatisfy(call -> assertThat(call.due()).isEqualTo(now))
                .extracting(Planned::meant)
                .containsExactlyInAnyOrder(utc("2026-06-11T13:00:00Z"), utc("2026-06-19T04:00:00Z"));
    }

    @Test
    void usesTheWordsOfTheStanding() {
        var visit = at("2026-06-18T14:30");
        assertThat(PLAN.of(usual(), visit, Standing.CONFIRMED, NEW_YORK, LONG_BEFORE))
                .extracting(Planned::text)
                .containsExactly("reminds", "reminds");
        assertThat(PLAN.of(usual(), visit, Standing.ASKED_TO_MOVE, NEW_YORK, LONG_BEFORE))
                .extracting(Planned::text)
                .containsExactly("waits", "waits");
    }

    @Test
    void waitsOverTheDayThatApiaSkipped() {
        var apia = ZoneId.of("Pacific/Apia");
        var evening = WallTime.instant(LocalDateTime.parse("2011-12-29T22:00"), apia);
        assertThat(LocalDateTime.ofInstant(HOURS.onOrAfter(evening, apia), apia))
                .isEqualTo(LocalDateTime.parse("2011-12-31T08:00"));
    }
}
