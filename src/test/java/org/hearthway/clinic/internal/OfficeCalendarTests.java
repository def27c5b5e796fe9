package org.hearthway.clinic.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Set;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.ContentReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OfficeCalendarTests {

    private static final Set<DayOfWeek> WEEKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private final HolidayKind holidays = new HolidayKind();
    private final OfficeCalendar calendar = new OfficeCalendar(settings(WEEKDAYS), holidays, () -> OwnDays.Known.NONE);

    @BeforeEach
    void readTheShippedHolidays() {
        assertThat(ContentReading.shipped(holidays)).isEmpty();
    }

    @Test
    void isClosedOnWeekendsAndHolidays() {
        assertThat(calendar.isOpen(LocalDate.of(2026, 4, 2))).isTrue();
        assertThat(calendar.isOpen(LocalDate.of(2026, 4, 3))).as("Good Friday").isFalse();
        assertThat(calendar.isOpen(LocalDate.of(2026, 4, 4))).as("Saturday").isFalse();
        assertThat(calendar.holiday(LocalDate.of(2026, 4, 6)).orElseThrow().es())
                .isEqualTo("Lunes de Pascua");
        assertThat(calendar.holiday(LocalDate.of(2026, 4, 7))).isEmpty();
    }

    /** Years with an early, a late and a middle Easter; Easter Sundays from the table that HolidayRuleTests holds. */
    @ParameterizedTest
    @CsvSource({"2008-03-23", "2011-04-24", "2026-04-05", "2027-03-28", "2038-04-25", "2046-03-25"})
    void whatHangsOnEasterMovesWithItAndTheOthersStay(LocalDate easter) {
        int year = easter.getYear();
        assertThat(calendar.holiday(easter.minusDays(2)).orElseThrow().en()).isEqualTo("Good Friday");
        assertThat(calendar.holiday(easter).orElseThrow().en()).isEqualTo("Easter Sunday");
        assertThat(calendar.holiday(easter.plusDays(1)).orElseThrow().en()).isEqualTo("Easter Monday");
        assertThat(calendar.onOrAfter(easter.minusDays(2))).isEqualTo(easter.plusDays(2));
        assertThat(LocalDate.of(year, 3, 1)
                        .datesUntil(LocalDate.of(year, 5, 1))
                        .filter(day -> calendar.holiday(day).isPresent()))
                .containsExactly(easter.minusDays(2), easter, easter.plusDays(1));
        assertThat(calendar.holiday(LocalDate.of(year, 12, 25)).orElseThrow().en())
                .isEqualTo("Christmas Day");
    }

    @Test
    void findsTheOpenDayAfterAndBeforeALongWeekend() {
        assertThat(calendar.onOrAfter(LocalDate.of(2026, 4, 3))).isEqualTo(LocalDate.of(2026, 4, 7));
        assertThat(calendar.onOrBefore(LocalDate.of(2026, 4, 6))).isEqualTo(LocalDate.of(2026, 4, 2));
        assertThat(calendar.onOrAfter(LocalDate.of(2026, 4, 7))).isEqualTo(LocalDate.of(2026, 4, 7));
    }

    @Test
    void saysSoWhenTheClinicNeverOpens() {
        var never = new OfficeCalendar(settings(Set.of()), holidays, () -> OwnDays.Known.NONE);
        assertThatThrownBy(() -> never.onOrAfter(LocalDate.of(2026, 4, 7))).hasMessageContaining("no open day");
    }

    @Test
    void namesTheLineOfAHolidayWithoutARule() {
        var lines = ContentReading.text(holidays, "holidays/here.yaml", """
                name: {en: Here, es: Aquí}
                holidays:
                  - name: {en: Some day, es: Algún día}
                  - name: {en: Far day, es: Día lejano}
                    each-year-on: {month: february, day: 31}
                  - name: {en: Long day, es: Día largo}
                    weekday-of-month: {month: june, weekday: monday}
                """);
        assertThat(lines)
                .containsExactly(
                        "content/holidays/here.yaml:3: the holiday has no rule or several, expected one of"
                                + " each-year-on, weekday-of-month, days-from-easter",
                        "content/holidays/here.yaml:5: \"day\" is 31, expected a day that the month has",
                        "content/holidays/here.yaml:7: \"nth\" is missing, expected 1 to 4, or last: yes");
    }

    private static ClinicSettings settings(Set<DayOfWeek> officeDays) {
        return new ClinicSettings(
                "Test Clinic",
                "Test Office",
                "office@clinic.example",
                ZoneId.of("America/New_York"),
                "555-0100",
                "555-0121",
                "555-0134",
                officeDays,
                LocalTime.of(8, 0),
                LocalTime.of(16, 30),
                "http://localhost:8080",
                false);
    }
}
