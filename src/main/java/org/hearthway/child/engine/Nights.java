package org.hearthway.child.engine;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;
import java.util.Set;

/**
 * The nights a child sleeps at one caregiver's.
 *
 * @param week the nights of every week; of every other week, counted from the week of {@code turns}, when that is there
 * @param otherWeek the nights of the weeks in between; counts only with {@code turns}
 * @param turns any day of a week in which {@code week} holds, when two weeks take turns
 */
public record Nights(Set<DayOfWeek> week, Set<DayOfWeek> otherWeek, Optional<LocalDate> turns) {

    /** No night is known. */
    public static final Nights NONE = new Nights(Set.of(), Set.of(), Optional.empty());

    private static final int DAYS = 7;

    public Nights {
        week = Set.copyOf(week);
        otherWeek = Set.copyOf(otherWeek);
    }

    /** The same nights each week. */
    public static Nights everyWeek(Set<DayOfWeek> week) {
        return new Nights(week, Set.of(), Optional.empty());
    }

    /** Whether any night is known. */
    public boolean isKnown() {
        return !week.isEmpty() || (turns.isPresent() && !otherWeek.isEmpty());
    }

    /** Whether the night that begins on this day is one of them. */
    public boolean holdsOn(LocalDate day) {
        var nights = turns.filter(from -> isInBetween(from, day)).isPresent() ? otherWeek : week;
        return nights.contains(day.getDayOfWeek());
    }

    private static boolean isInBetween(LocalDate from, LocalDate day) {
        var weeks = ChronoUnit.DAYS.between(monday(from), monday(day)) / DAYS;
        return Math.floorMod(weeks, 2L) == 1;
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
