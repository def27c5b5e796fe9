package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.pump.engine.Sample.NEW_YORK;
import static org.hearthway.pump.engine.Sample.filled;
import static org.hearthway.pump.engine.Sample.ml;
import static org.hearthway.pump.engine.Sample.newYork;
import static org.hearthway.pump.engine.Sample.program;
import static org.hearthway.pump.engine.Sample.pump;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Predicate;
import org.hearthway.pump.engine.RefillForecast.Caution;
import org.hearthway.pump.engine.RefillForecast.Limit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefillForecastTests {

    private static final RefillRules RULES = RefillRules.usual();

    private static final Predicate<LocalDate> ANY_DAY = day -> true;

    private static final Predicate<LocalDate> WEEKDAYS =
            day -> day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }

    /** Reference table ITB-W3, computed by script: days, alarm date, days to empty, refill-by. */
    @ParameterizedTest
    @CsvSource({
        "2026-01-15, 20, 2, 110, 500, 81.818, 90.909, 2026-04-06, 5, 2026-07-14, 2026-04-01, ALARM",
        "2026-01-15, 40, 2, 95, 2000, 800, 842.105, 2028-03-25, 5, 2026-07-14, 2026-07-14, LABEL_LIFE",
        "2026-03-03, 20, 2, 320, 2000, 112.5, 125, 2026-06-23, 5, 2026-08-30, 2026-06-18, ALARM",
        "2026-03-03, 20, 4, 320, 2000, 100, 125, 2026-06-11, 5, 2026-08-30, 2026-06-06, ALARM",
        "2026-02-27, 20, 1, 62.5, 500, 152, 160, 2026-07-29, 3, 2026-08-26, 2026-07-26, ALARM"
    })
    void givesTheDatesOfTheReference(
            LocalDate refill,
            String volume,
            String alarm,
            String dose,
            String strength,
            String days,
            String daysToEmpty,
            LocalDate alarmDay,
            int margin,
            LocalDate life,
            LocalDate latest,
            Limit decides) {
        var at = refill.atTime(10, 0).atZone(NEW_YORK).toInstant();
        var reservoir = filled(pump(volume, alarm), at, strength, Dosing.constant(dose));
        var forecast = RefillForecast.of(reservoir, RULES.withMargin(margin), NEW_YORK, ANY_DAY);
        assertThat(forecast.alarm().orElseThrow().sinceFill().inDays().rounded(3))
                .isEqualByComparingTo(days);
        assertThat(forecast.empty().orElseThrow().sinceFill().inDays().rounded(3))
                .isEqualByComparingTo(daysToEmpty);
        assertThat(forecast.planningDay()).contains(alarmDay);
        assertThat(forecast.lifeEnds()).isEqualTo(life);
        assertThat(forecast.latest()).isEqualTo(latest);
        assertThat(forecast.decides()).isEqualTo(decides);
        assertThat(forecast.cautions()).isEmpty();
    }

    /** Reference, below ITB-W3: 10:38:11Z, to the second; bug values 04-07 (rounded up) and 04-15 (no alarm volume). */
    @Test
    void theAlarmSoundsAtAMoment() {
        var reservoir = filled(pump("20", "2"), newYork("2026-01-15T10:00"), "500", Dosing.constant("110"));
        assertThat(reservoir.alarm().orElseThrow().at())
                .isBetween(Instant.parse("2026-04-07T10:38:10.5Z"), Instant.parse("2026-04-07T10:38:11.5Z"));
        assertThat(RefillForecast.of(reservoir, RULES, NEW_YORK, ANY_DAY).planningDay())
                .contains(day("2026-04-06"))
                .isNotEqualTo(Optional.of(day("2026-04-07")))
                .isNotEqualTo(Optional.of(day("2026-04-15")));
    }

    /** Rule P2 of the reference: exactly 270 days; rounding the daily volume first gives 269. */
    @Test
    void nothingIsRoundedOnTheWay() {
        var reservoir = filled(pump("20", "2"), newYork("2026-01-15T10:00"), "1500", Dosing.constant("100"));
        var alarm = reservoir.alarm().orElseThrow();
        assertThat(alarm.sinceFill()).isEqualTo(Elapsed.of(Duration.ofDays(270)));
        assertThat(alarm.at()).isEqualTo(newYork("2026-01-15T10:00").plus(Duration.ofDays(270)));
        assertThat(alarm.sinceFill().wholeDays()).isEqualTo(270);
    }

    /** Rule P1 of the reference: when clocks went back, whole days from just past midnight end on the day after the alarm. */
    @Test
    void afterClocksWentBackThePlanningDayIsThatOfTheAlarm() {
        // 18 mL at 0.3 mL a day: 60 days to the second; 00:30 in summer time is 23:30 of the day before in winter time
        var reservoir = filled(pump("20", "2"), newYork("2026-10-01T00:30"), "500", Dosing.constant("150"));
        assertThat(reservoir.alarm().orElseThrow().at()).isEqualTo(newYork("2026-11-29T23:30"));
        assertThat(RefillForecast.of(reservoir, RULES, NEW_YORK, ANY_DAY).planningDay())
                .contains(day("2026-11-29"));
    }

    /** Rule P1: after clocks went forward, the alarm falls into the next day and whole days still give the earlier one. */
    @Test
    void afterClocksWentForwardThePlanningDayIsThatOfTheWholeDays() {
        var reservoir = filled(pump("20", "2"), newYork("2026-03-01T23:30"), "500", Dosing.constant("150"));
        assertThat(reservoir.alarm().orElseThrow().at()).isEqualTo(newYork("2026-05-01T00:30"));
        assertThat(RefillForecast.of(reservoir, RULES, NEW_YORK, ANY_DAY).planningDay())
                .contains(day("2026-04-30"));
    }

    /** Rule P3 of the reference. 2026-06-06 is a Saturday. */
    @Test
    void theWindowEndsOnAnOpenDayBeforeNeverAfter() {
        var reservoir = filled(pump("20", "4"), newYork("2026-03-03T10:00"), "2000", Dosing.constant("320"));
        var forecast = RefillForecast.of(reservoir, RULES, NEW_YORK, WEEKDAYS);
        assertThat(forecast.latest()).isEqualTo(day("2026-06-05"));
        assertThat(forecast.opens()).isEqualTo(day("2026-05-22"));
    }

    /** Rule P3 of the reference: never empty, never before the fill. */
    @Test
    void aWindowThatCannotKeepTheMarginIsTheDayOfTheFillAndSaysSo() {
        var reservoir = Reservoir.filled(
                pump("20", "2"),
                Filling.of(newYork("2026-03-03T10:00"), ml("2.5")),
                program(newYork("2026-03-03T10:00"), "500", Dosing.constant("100")));
        var forecast = RefillForecast.of(reservoir, RULES, NEW_YORK, ANY_DAY);
        assertThat(forecast.planningDay()).contains(day("2026-03-05"));
        assertThat(forecast.opens()).isEqualTo(day("2026-03-03"));
        assertThat(forecast.latest()).isEqualTo(day("2026-03-03"));
        assertThat(forecast.cautions()).containsExactly(Caution.DUE_AT_ONCE);
    }

    /** Common practice, no source: a closed clinic is no reason to be late. */
    @Test
    void withoutAnyOpenDayTheLastDayStandsAndSaysSo() {
        var reservoir = filled(pump("20", "2"), newYork("2026-01-15T10:00"), "500", Dosing.constant("110"));
        var forecast = RefillForecast.of(reservoir, RULES, NEW_YORK, day -> false);
        assertThat(forecast.latest()).isEqualTo(day("2026-04-01"));
        assertThat(forecast.opens()).isEqualTo(day("2026-03-18"));
        assertThat(forecast.cautions()).containsExactly(Caution.NO_OPEN_DAY);
    }

    /** Common practice, no source: the pharmacy's own day is kept when it is the earlier one. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-20, 2026-03-20, BEYOND_USE, 2026-03-20",
        "2026-04-01, 2026-04-01, ALARM, 2026-04-01",
        "2026-07-13, 2026-04-01, ALARM, 2026-07-13",
        "2026-09-01, 2026-04-01, ALARM, 2026-07-14"
    })
    void theFillsOwnDayCountsWhenItIsEarlier(LocalDate own, LocalDate latest, Limit decides, LocalDate lifeEnds) {
        var at = newYork("2026-01-15T10:00");
        var reservoir = Reservoir.filled(
                pump("20", "2"), Filling.of(at, ml("20")).usableUntil(own), program(at, "500", Dosing.constant("110")));
        var forecast = RefillForecast.of(reservoir, RULES, NEW_YORK, ANY_DAY);
        assertThat(forecast.latest()).isEqualTo(latest);
        assertThat(forecast.decides()).isEqualTo(decides);
        assertThat(forecast.lifeEnds()).isEqualTo(lifeEnds);
    }

    @Test
    void aStoppedPumpHasNoAlarmAndIsPlannedByTheLifeOfTheDrug() {
        var reservoir = filled(pump("20", "2"), newYork("2026-01-15T10:00"), "500", Dosing.stopped());
        var forecast = RefillForecast.of(reservoir, RULES, NEW_YORK, ANY_DAY);
        assertThat(forecast.alarm()).isEmpty();
        assertThat(forecast.empty()).isEmpty();
        assertThat(forecast.planningDay()).isEmpty();
        assertThat(forecast.latest()).isEqualTo(day("2026-07-14"));
        assertThat(forecast.cautions()).containsExactly(Caution.NOTHING_GIVEN);
    }

    /** The far ends of the world's clocks; the day of the fill is the local one. */
    @ParameterizedTest
    @CsvSource({"Pacific/Kiritimati, 2026-01-16, 2026-04-07", "Etc/GMT+12, 2026-01-15, 2026-04-06"})
    void theDayOfAFillIsTheLocalOne(ZoneId zone, LocalDate filled, LocalDate planning) {
        var reservoir = filled(pump("20", "2"), Instant.parse("2026-01-15T12:00:00Z"), "500", Dosing.constant("110"));
        var forecast = RefillForecast.of(reservoir, RULES, zone, ANY_DAY);
        assertThat(forecast.planningDay()).contains(planning);
        assertThat(forecast.lifeEnds()).isEqualTo(filled.plusDays(180));
    }

    /** Rule P8 of the reference; 2026-03-22 is a Sunday. */
    @Test
    void theDrugIsOrderedLeadDaysBeforeTheVisitOnAnOpenDay() {
        assertThat(OrderBy.of(day("2026-04-01"), RULES, ANY_DAY).day()).isEqualTo(day("2026-03-22"));
        assertThat(OrderBy.of(day("2026-04-01"), RULES, WEEKDAYS).day()).isEqualTo(day("2026-03-20"));
    }

    /** Rule P7 of the reference. */
    @ParameterizedTest
    @CsvSource({
        "2026-04-06, 2026-04-06, 2026-04-06, 0, false",
        "2026-04-06, 2026-04-07, 2026-04-06, 1, false",
        "2026-04-06, 2026-04-08, 2026-04-06, 2, true",
        "2026-04-06, 2026-04-05, 2026-04-05, 1, false",
        "2026-03-01, 2026-02-27, 2026-02-27, 2, true"
    })
    void theEarlierOfPrintOutAndOursStands(
            LocalDate ours, LocalDate printed, LocalDate stands, long apart, boolean flagged) {
        var check = PrintOutCheck.of(ours, printed, RULES);
        assertThat(check.stands()).isEqualTo(stands);
        assertThat(check.daysApart()).isEqualTo(apart);
        assertThat(check.flagged()).isEqualTo(flagged);
    }

    @Test
    void everyLineOfItCanBeFollowed() {
        var reservoir = filled(pump("20", "2"), newYork("2026-01-15T10:00"), "500", Dosing.constant("110"));
        var lines = RefillForecast.of(reservoir, RULES, NEW_YORK, ANY_DAY).how().lines();
        assertThat(lines)
                .extracting(Derivation.Line::symbols)
                .contains("Vd = D / C", "t = (V - Va) / Vd", "n = floor(t)");
        assertThat(lines)
                .extracting(line -> line.numbers(RefillForecastTests::written))
                .contains("110 / 500", "(20 - 2) / 0.22", "floor(81.82)", "2026-01-15 + 81");
    }

    private static String written(Shown shown) {
        if (shown instanceof Quantity quantity) {
            return quantity.rounded(2).toPlainString();
        }
        return shown instanceof Shown.Day day ? day.date().toString() : shown.toString();
    }
}
