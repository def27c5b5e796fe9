package org.hearthway.reminder.engine;

import java.time.LocalTime;
import java.util.Map;
import java.util.Optional;

/**
 * One reminder of a rule.
 *
 * @param daysBefore calendar days before the occasion; negative for days after it
 * @param at the hour on that day; empty for the hour of the occasion itself
 * @param way by mail or by a call
 * @param urgent whether it must be seen to before everything else
 * @param words which text is used in which standing; in a standing that is not named the step falls away
 */
public record Step(int daysBefore, Optional<LocalTime> at, Way way, boolean urgent, Map<Standing, String> words) {

    public Step {
        words = Map.copyOf(words);
    }

    /** Name of the step within its rule, such as {@code send-7}. */
    public String name() {
        return way.name().toLowerCase(java.util.Locale.ROOT) + (daysBefore < 0 ? "-after" : "-") + Math.abs(daysBefore);
    }
}
