package org.hearthway.program.engine.week;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Days that follow each other and are laid out alike, week for week.
 *
 * @param from first day
 * @param until last day, included; empty for open end
 * @param layout where the exercises are
 */
public record Stretch(LocalDate from, Optional<LocalDate> until, Layout layout) {

    /** Whether the day lies in it. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && until.map(last -> !day.isAfter(last)).orElse(true);
    }
}
