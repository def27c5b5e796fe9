package org.hearthway.clinic.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.ibm.icu.util.EasterHoliday;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.Date;
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

    /** On-Line Encyclopedia of Integer Sequences, A060958: Easter Sundays from 2001 on, as days of March. */
    private static final int[] DAYS_OF_MARCH_FROM_2001 = {
        46, 31, 51, 42, 27, 47, 39, 23, 43, 35, 55, 39, 31, 51, 36, 27, 47, 32, 52, 43, 35, 48, 40, 31, 51, 36, 28, 47,
        32, 52, 44, 28, 48, 40, 25, 44, 36, 56, 41, 32, 52, 37, 29, 48, 40, 25, 45, 36, 49, 41, 33, 52, 37, 29, 49, 33,
        53, 45, 30, 49, 41, 26, 46, 37, 29, 42
    };

    @Test
    void agreesWithThePublishedTable() {
        for (int n = 0; n < DAYS_OF_MARCH_FROM_2001.length; n++) {
            int year = 2001 + n;
            assertThat(Easter.sunday(year))
                    .isEqualTo(LocalDate.of(year, 3, 1).plusDays(DAYS_OF_MARCH_FROM_2001[n] - 1));
        }
    }

    /** The examples of Meeus, Astronomical Algorithms, page 68. */
    @ParameterizedTest
    @CsvSource({
        "1991-03-31",
        "1992-04-19",
        "1954-04-18",
        "2000-04-23",
        "1818-03-22",
        "2285-03-22",
        "1886-04-25",
        "1943-04-25"
    })
    void agreesWithTheExamplesOfItsSource(LocalDate easter) {
        assertThat(Easter.sunday(easter.getYear())).isEqualTo(easter);
    }

    /** A second opinion: the Easter of the library that also writes our dates, for a thousand years. */
    @Test
    void agreesWithAnotherProgram() {
        var easter = new EasterHoliday("easter");
        for (int year = 1901; year < 2900; year++) {
            var found = easter.firstBetween(at(LocalDate.of(year, 1, 1)), at(LocalDate.of(year, 12, 31)));
            assertThat(Easter.sunday(year))
                    .as(String.valueOf(year))
                    .isEqualTo(found.toInstant().atZone(ZoneId.systemDefault()).toLocalDate());
        }
    }

    private static Date at(LocalDate day) {
        return Date.from(day.atStartOfDay(ZoneId.systemDefault()).toInstant());
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
