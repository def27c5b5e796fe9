package org.hearthway.clinic.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import org.hearthway.clinic.engine.HolidayRule.FromEaster;
import org.hearthway.clinic.engine.HolidayRule.NthWeekday;
import org.hearthway.clinic.engine.HolidayRule.SameDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HolidayRuleTests {

    /** The first four: reference list of computed Easter Sundays. The two bounds, March 22 and April 25: from memory. */
    @ParameterizedTest
    @CsvSource({"2026-04-05", "2027-03-28", "2028-04-16", "2038-04-25", "1818-03-22", "2285-03-22", "1943-04-25"})
    void findsEasterSunday(LocalDate easter) {
        assertThat(Easter.sunday(easter.getYear())).isEqualTo(easter);
    }

    @Test
    void easterIsASundayBetweenMarch22AndApril25() {
        for (int year = 1583; year < 4000; year++) {
            var easter = Easter.sunday(year);
            assertThat(easter.getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
            assertThat(easter).isBetween(LocalDate.of(year, 3, 22), LocalDate.of(year, 4, 25));
        }
    }

    @Test
    void countsDaysFromEaster() {
        assertThat(new FromEaster(-2).in(2026)).contains(LocalDate.of(2026, 4, 3));
        assertThat(new FromEaster(1).in(2027)).contains(LocalDate.of(2027, 3, 29));
    }

    /** Weekdays of 2026 read off a calendar. */
    @Test
    void findsTheNthAndTheLastWeekdayOfAMonth() {
        assertThat(new NthWeekday(Month.MAY, DayOfWeek.MONDAY, -1).in(2026)).contains(LocalDate.of(2026, 5, 25));
        assertThat(new NthWeekday(Month.SEPTEMBER, DayOfWeek.MONDAY, 1).in(2026))
                .contains(LocalDate.of(2026, 9, 7));
        assertThat(new NthWeekday(Month.NOVEMBER, DayOfWeek.THURSDAY, 4).in(2026))
                .contains(LocalDate.of(2026, 11, 26));
    }

    @Test
    void hasNoFebruary29InACommonYear() {
        var leapDay = new SameDay(MonthDay.of(2, 29));
        assertThat(leapDay.in(2026)).isEmpty();
        assertThat(leapDay.in(2028)).contains(LocalDate.of(2028, 2, 29));
    }

    @Test
    void refusesAFifthWeekday() {
        assertThatThrownBy(() -> new NthWeekday(Month.MAY, DayOfWeek.MONDAY, 5)).hasMessageContaining("1 to 4");
    }
}
