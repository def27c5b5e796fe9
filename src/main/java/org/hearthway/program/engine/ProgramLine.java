package org.hearthway.program.engine;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One exercise of a program.
 *
 * @param exercise identifier in the library
 * @param prescription how much, against what, on how many days
 * @param days the weekdays that it may be on, at least as many as the rhythm asks for
 * @param from first day
 * @param until last day, included; empty for open end; not before the first
 * @param note to the family, at most 500 characters, may be empty
 * @param priority how much it matters when a week has no room for all
 * @param beyond why the dose lies outside what is usual for the exercise at the child's age, at most 500 characters; empty
 *     when it lies within
 * @param exceptions leave to do it although a rule of care forbids the movement
 */
public record ProgramLine(
        String exercise,
        Prescription prescription,
        Set<DayOfWeek> days,
        LocalDate from,
        Optional<LocalDate> until,
        String note,
        Priority priority,
        String beyond,
        List<Excepted> exceptions) {

    public ProgramLine {
        days = Collections.unmodifiableSet(days.isEmpty() ? EnumSet.noneOf(DayOfWeek.class) : EnumSet.copyOf(days));
        exceptions = List.copyOf(exceptions);
    }

    /** A line on exactly these days, with nothing said beyond dose and side. */
    public static ProgramLine of(
            String exercise,
            Dose dose,
            Side side,
            Set<DayOfWeek> days,
            LocalDate from,
            Optional<LocalDate> until,
            String note) {
        return new ProgramLine(
                exercise, Prescription.of(dose, side, days), days, from, until, note, Priority.SECOND, "", List.of());
    }

    /** The same with another prescription. */
    public ProgramLine with(Prescription other) {
        return new ProgramLine(exercise, other, days, from, until, note, priority, beyond, exceptions);
    }

    /** The same between other days. */
    public ProgramLine between(LocalDate first, Optional<LocalDate> last) {
        return new ProgramLine(exercise, prescription, days, first, last, note, priority, beyond, exceptions);
    }

    /** The dose of a time. */
    public Dose dose() {
        return prescription.dose();
    }

    /** Which side does it. */
    public Side side() {
        return prescription.side();
    }

    /** Whether the therapist named each day: it is on all the days that it may be on, and none is there to choose. */
    public boolean isOnFixedDays() {
        return prescription.rhythm().days() >= days.size();
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

    /** Whether the line may be on this day; on fixed days it is. */
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
