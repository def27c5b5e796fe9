package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.pump.engine.Sample.NEW_YORK;
import static org.hearthway.pump.engine.Sample.dose;
import static org.hearthway.pump.engine.Sample.filled;
import static org.hearthway.pump.engine.Sample.newYork;
import static org.hearthway.pump.engine.Sample.program;
import static org.hearthway.pump.engine.Sample.pump;
import static org.hearthway.pump.engine.Sample.refused;
import static org.hearthway.pump.engine.Sample.strength;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScheduleTests {

    private static final DayPattern EVEN = DayPattern.of(Step.of("00:00", "00:00", "8"));

    private static final DayPattern THREE_STEPS = DayPattern.of(
            Step.of("22:00", "06:00", "5.0"), Step.of("06:00", "08:00", "15.0"), Step.of("08:00", "22:00", "7.5"));

    private static Map<DayOfWeek, DayPattern> everyDay(DayPattern day) {
        var week = new EnumMap<DayOfWeek, DayPattern>(DayOfWeek.class);
        for (var of : DayOfWeek.values()) {
            week.put(of, day);
        }
        return week;
    }

    /** Reference example ITB-W7, computed by script: replaces 244, adds 252. */
    @ParameterizedTest
    @CsvSource({"REPLACES_BASAL, 244", "ADDS_TO_BASAL, 252"})
    void aBolusReplacesTheStepsOrAddsToThem(BolusMode mode, String total) {
        var day = EVEN.with(mode, Bolus.of("08:00", "30", 30), Bolus.of("16:00", "30", 30));
        var added = ScheduleTotal.of(day);
        assertThat(added.dose()).isEqualTo(dose(total));
        var last = added.how().lines().get(added.how().lines().size() - 1);
        assertThat(last.numbers(shown -> ((Quantity) shown).rounded(3).toPlainString()))
                .isEqualTo(mode == BolusMode.ADDS_TO_BASAL ? "192 + 30 + 30" : "184 + 30 + 30");
    }

    /** 100 mcg a day are 25/6 an hour, a fraction that no decimal holds; 100 - 100 × 30/1440 + 30. */
    @Test
    void aDailyDoseIsSpreadEvenlyUnderABolus() {
        var day = DayPattern.even(dose("100"));
        assertThat(ScheduleTotal.of(day).dose()).isEqualTo(dose("100"));
        assertThat(ScheduleTotal.of(day.with(BolusMode.REPLACES_BASAL, Bolus.of("08:00", "30", 30)))
                        .dose()
                        .rounded(4))
                .isEqualByComparingTo("127.9167");
    }

    /** Reference example ITB-W7: 40 + 30 + 105 = 175 mcg a day, 0.35 mL a day at 500. */
    @Test
    void stepsAddUpToADailyDose() {
        var total = ScheduleTotal.of(THREE_STEPS);
        assertThat(total.dose()).isEqualTo(dose("175"));
        assertThat(Conversion.of(total.dose(), strength("500")).dailyVolume().rounded(4))
                .isEqualByComparingTo("0.35");
    }

    /** Public unit tables: 120 mcg a day are 5 an hour. */
    @Test
    void aDoseIsConvertedToEveryUnit() {
        var conversion = Conversion.of(dose("120"), strength("500"));
        assertThat(conversion.hourly().rounded(4)).isEqualByComparingTo("5");
        assertThat(conversion.dailyVolume().rounded(4)).isEqualByComparingTo("0.24");
        assertThat(conversion.flow().rounded(4)).isEqualByComparingTo("0.01");
    }

    @Test
    void stepsLeaveNoGapAndDoNotOverlap() {
        refused(
                "steps",
                "steps.gap",
                () -> DayPattern.of(Step.of("22:00", "06:00", "5"), Step.of("06:00", "21:59", "7")));
        refused(
                "steps",
                "steps.overlap",
                () -> DayPattern.of(Step.of("22:00", "06:00", "5"), Step.of("06:00", "22:01", "7")));
        refused(
                "steps",
                "steps.overlap",
                () -> DayPattern.of(Step.of("00:00", "00:00", "5"), Step.of("00:00", "00:00", "5")));
        refused("steps", "outside", () -> DayPattern.of());
        refused("from", "whole-minutes", () -> Step.of("22:00:30", "06:00", "5"));
    }

    @Test
    void bolusesDoNotOverlapAlsoThroughMidnight() {
        refused(
                "boluses",
                "boluses.overlap",
                () -> Dosing.cycle(
                        EVEN.with(BolusMode.ADDS_TO_BASAL, Bolus.of("08:00", "30", 30), Bolus.of("08:29", "30", 30))));
        refused(
                "boluses",
                "boluses.overlap",
                () -> Dosing.cycle(
                        EVEN.with(BolusMode.ADDS_TO_BASAL, Bolus.of("23:45", "30", 30), Bolus.of("00:14", "30", 30))));
        var week = everyDay(EVEN);
        week.put(DayOfWeek.SUNDAY, EVEN.with(BolusMode.ADDS_TO_BASAL, Bolus.of("23:45", "30", 30)));
        week.put(DayOfWeek.MONDAY, EVEN.with(BolusMode.ADDS_TO_BASAL, Bolus.of("00:14", "30", 30)));
        refused("boluses", "boluses.overlap", () -> Dosing.week(week));
        week.put(DayOfWeek.MONDAY, EVEN.with(BolusMode.ADDS_TO_BASAL, Bolus.of("00:15", "30", 30)));
        assertThat(Dosing.week(week).followsTheClock()).isTrue();
    }

    @Test
    void aBolusThroughMidnightRunsIntoTheNextDay() {
        var week = everyDay(EVEN);
        week.put(DayOfWeek.FRIDAY, EVEN.with(BolusMode.REPLACES_BASAL, Bolus.of("23:45", "30", 30)));
        var doses = ((Dosing.Week) Dosing.week(week)).doses();
        // Friday loses 15 minutes of 8 mcg/h and gets half a bolus, and so does Saturday
        assertThat(doses.get(4)).isEqualTo(dose("205"));
        assertThat(doses.get(5)).isEqualTo(dose("205"));
        assertThat(doses.get(6)).isEqualTo(dose("192"));
    }

    /** 2026-05-04 is a Monday, 1970-01-01 was a Thursday (java.time). */
    @Test
    void everyWeekdayHasItsOwnStepsWeekAfterWeek() {
        var week = everyDay(EVEN);
        week.put(DayOfWeek.MONDAY, THREE_STEPS);
        var monday = newYork("2026-05-04T00:00");
        var program = program(monday, "500", Dosing.week(week));
        assertThat(program.given(monday, newYork("2026-05-05T00:00")).rounded(3))
                .isEqualByComparingTo("175");
        assertThat(program.given(newYork("2026-05-03T00:00"), monday).rounded(3))
                .isEqualByComparingTo("192");
        assertThat(program.given(monday, newYork("2026-06-01T00:00")).rounded(3))
                .isEqualByComparingTo("5308"); // 4 × (175 + 6 × 192)
        assertThat(program.rate(newYork("2026-06-01T07:00")).perHour().rounded(3))
                .isEqualByComparingTo("15");
        assertThat(program.rate(newYork("2026-06-02T07:00")).perHour().rounded(3))
                .isEqualByComparingTo("8");
    }

    @Test
    void aWeekNeedsAllItsDays() {
        var six = everyDay(EVEN);
        six.remove(DayOfWeek.SUNDAY);
        refused("days", "week", () -> Dosing.week(six));
    }

    /** A thousandfold slip in a step shows in the total. */
    @Test
    void aTotalThatIsNoDailyDoseIsRefused() {
        refused("dose", "outside", () -> Dosing.cycle(Step.of("00:00", "00:00", "0.008")));
        refused("dose", "outside", () -> Dosing.cycle(Step.of("00:00", "00:00", "90")));
        refused("rate", "outside", () -> Step.of("00:00", "00:00", "8000"));
    }

    /** Reference ITB-W7 and rule P5 (from memory: a pump's clock follows no daylight saving time). */
    @Test
    void afterClocksWentForwardAStepRunsAnHourLateUntilTheNextProgramming() {
        var programmed = newYork("2026-02-02T10:00");
        var program = program(programmed, "500", Dosing.cycle(THREE_STEPS));
        assertThat(program.rate(newYork("2026-03-07T06:30")).perHour().rounded(2))
                .isEqualByComparingTo("15");
        assertThat(program.rate(newYork("2026-03-08T06:30")).perHour().rounded(2))
                .isEqualByComparingTo("5");
        assertThat(program.rate(newYork("2026-03-08T07:30")).perHour().rounded(2))
                .isEqualByComparingTo("15");
        assertThat(program.clock()
                        .local(LocalDateTime.parse("2026-03-09T06:00"), NEW_YORK)
                        .toLocalTime())
                .isEqualTo(LocalTime.of(7, 0));
        assertThat(program.shift(newYork("2026-03-08T01:59"), NEW_YORK)).isEmpty();
        assertThat(program.shift(newYork("2026-04-01T10:00"), NEW_YORK))
                .contains(new PumpClock.Shift(Instant.parse("2026-03-08T07:00:00Z"), Duration.ofHours(1)));
        assertThat(program.shift(newYork("2026-11-02T10:00"), NEW_YORK)).isEmpty();
        assertThat(program.shifts(newYork("2026-11-02T10:00"), NEW_YORK))
                .extracting(PumpClock.Shift::by)
                .containsExactly(Duration.ofHours(1), Duration.ZERO);
        var anew = program(newYork("2026-03-10T10:00"), "500", Dosing.cycle(THREE_STEPS));
        assertThat(anew.shift(newYork("2026-10-31T10:00"), NEW_YORK)).isEmpty();
        assertThat(anew.rate(newYork("2026-03-11T06:30")).perHour().rounded(2)).isEqualByComparingTo("15");
    }

    /** Reference section 6B: 2026-11-01T06:00Z. */
    @Test
    void afterClocksWentBackAStepRunsAnHourEarly() {
        var program = program(newYork("2026-09-01T10:00"), "500", Dosing.cycle(THREE_STEPS));
        assertThat(program.rate(newYork("2026-11-02T05:30")).perHour().rounded(2))
                .isEqualByComparingTo("15");
        assertThat(program.shift(newYork("2026-12-01T10:00"), NEW_YORK))
                .contains(new PumpClock.Shift(Instant.parse("2026-11-01T06:00:00Z"), Duration.ofHours(-1)));
        assertThat(program(newYork("2026-09-01T10:00"), "500", Dosing.constant("100"))
                        .shift(newYork("2026-12-01T10:00"), NEW_YORK))
                .isEmpty();
    }

    /** The alarm falls into the part of the day that gives most. */
    @Test
    void theAlarmOfAScheduleFallsIntoAStep() {
        var midnight = newYork("2026-05-04T00:00");
        // 18 mL at 500: 9000 mcg = 51 days of 175 and 75 more: 30 until 06:00, 30 until 08:00, 15 at 7.5 until 10:00
        var reservoir = filled(pump("20", "2"), midnight, "500", Dosing.cycle(THREE_STEPS));
        assertThat(reservoir.alarm().orElseThrow().at()).isEqualTo(newYork("2026-06-24T10:00"));
    }

    @Test
    void aPauseAtTheEndOfTheDayDoesNotDelayTheAlarm() {
        var midnight = newYork("2026-05-04T00:00");
        var pausing = Dosing.cycle(Step.of("00:00", "10:00", "9"), Step.of("10:00", "00:00", "0"));
        // 9000 mcg at 90 a day: exactly 100 days, all of it given by 10:00 of the hundredth
        var reservoir = filled(pump("20", "2"), midnight, "500", pausing);
        assertThat(reservoir.alarm().orElseThrow().at()).isEqualTo(newYork("2026-08-11T10:00"));
    }

    @Test
    void tellsWhichFlowsThePumpCannotDeliver() {
        var dosing = Dosing.cycle(
                Step.of("00:00", "12:00", "0"), Step.of("12:00", "18:00", "1"), Step.of("18:00", "00:00", "8"));
        var check = Deliverable.check(pump("20", "2"), strength("2000"), dosing);
        assertThat(check.holds()).isFalse();
        assertThat(check.outside())
                .extracting(flow -> flow.rate().perHour().rounded(2).intValue())
                .containsExactly(1);
        assertThat(Deliverable.check(pump("20", "2"), strength("500"), dosing).holds())
                .isTrue();
    }
}
