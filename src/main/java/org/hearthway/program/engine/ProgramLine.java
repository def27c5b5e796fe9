package org.hearthway.program.engine;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One exercise of a program.
 *
 * @param exercise identifier in the library
 * @param dose how much
 * @param side which side does it
 * @param days the weekdays, at least one
 * @param from first day
 * @param until last day, included; empty for open end; not before the first
 * @param note to the family, at most 500 characters, may be empty
 */
public record ProgramLine(
        String exercise,
        Dose dose,
        Side side,
        Set<DayOfWeek> days,
        LocalDate from,
        Optional<LocalDate> until,
        String note) {

    public ProgramLine {
        days = Collections.unmodifiableSet(days.isEmpty() ? EnumSet.noneOf(DayOfWeek.class) : EnumSet.copyOf(days));
    }

    /** Which side of the body. */
    public enum Side {
        /** The exercise has no sides. */
        NONE,
        LEFT,
        RIGHT,
        /** First one side, then the other, the dose for each. */
        EACH
    }

    /** Whether the line is for this day. */
    public boolean isOn(LocalDate day) {
        return days.contains(day.getDayOfWeek())
                && !day.isBefore(from)
                && until.map(last -> !day.isAfter(last)).orElse(true);
    }

    /**
     * The first day of the line within a span.
     *
     * @param first first day of the span
     * @param end the day after its last
     */
    public Optional<LocalDate> firstDayWithin(LocalDate first, LocalDate end) {
        var start = first.isBefore(from) ? from : first;
        return Stream.iterate(start, day -> day.isBefore(end), day -> day.plusDays(1))
                .limit(DayOfWeek.values().length)
                .filter(this::isOn)
                .findFirst();
    }

    /** Whether both lines are the same exercise and there is a day that both are for. */
    public boolean sharesADayWith(ProgramLine other) {
        if (!exercise.equals(other.exercise)) {
            return false;
        }
        var start = from.isBefore(other.from) ? other.from : from;
        return Stream.iterate(start, day -> day.plusDays(1))
                .limit(DayOfWeek.values().length)
                .anyMatch(day -> isOn(day) && other.isOn(day));
    }
}
