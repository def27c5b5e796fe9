package org.hearthway.clinic.engine;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.Year;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;

/** On which day of a year a holiday falls. */
public sealed interface HolidayRule {

    /** The day in that year; empty when the year has none, as for February 29. */
    Optional<LocalDate> in(int year);

    /** The same month and day each year. */
    record SameDay(MonthDay day) implements HolidayRule {

        @Override
        public Optional<LocalDate> in(int year) {
            return day.isValidYear(year) ? Optional.of(day.atYear(year)) : Optional.empty();
        }
    }

    /**
     * The nth weekday of a month.
     *
     * @param nth 1 to 4 from the month's beginning, or -1 for the last
     */
    record NthWeekday(Month month, DayOfWeek weekday, int nth) implements HolidayRule {

        public NthWeekday {
            if (nth != -1 && (nth < 1 || nth > 4)) {
                throw new DateTimeException("a weekday of a month is counted 1 to 4, or -1 for the last: " + nth);
            }
        }

        @Override
        public Optional<LocalDate> in(int year) {
            return Optional.of(
                    Year.of(year).atMonth(month).atDay(1).with(TemporalAdjusters.dayOfWeekInMonth(nth, weekday)));
        }
    }

    /**
     * Days from Easter Sunday.
     *
     * @param days negative before it, positive after it
     */
    record FromEaster(int days) implements HolidayRule {

        @Override
        public Optional<LocalDate> in(int year) {
            return Optional.of(Easter.sunday(year).plusDays(days));
        }
    }
}
