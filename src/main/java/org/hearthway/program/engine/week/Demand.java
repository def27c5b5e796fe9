package org.hearthway.program.engine.week;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a line of a program asks of weeks, and from when to when.
 *
 * @param ask what it asks of a whole week
 * @param from first day
 * @param until last day, included; empty for open end
 */
public record Demand(Ask ask, LocalDate from, Optional<LocalDate> until) {

    /** Whether the therapist named each of its days, so that there is nothing to choose. */
    public boolean isFixed() {
        return ask.days().size() <= ask.rhythm().days();
    }

    /** Whether the line asks for anything on this day, its weekday aside. */
    boolean holdsOn(LocalDate day) {
        return !day.isBefore(from) && until.map(last -> !day.isAfter(last)).orElse(true);
    }

    /** Whether the line names this day. */
    boolean isOn(LocalDate day) {
        return holdsOn(day) && ask.days().contains(day.getDayOfWeek());
    }
}
