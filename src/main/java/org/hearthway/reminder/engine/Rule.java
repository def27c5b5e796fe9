package org.hearthway.reminder.engine;

import java.util.List;

/**
 * When the family is reminded of one sort of occasion.
 *
 * @param id identifier
 * @param steps the reminders, in any order
 * @param tooLate the text of the call that takes the place of a mail which could go only when it is too late
 */
public record Rule(String id, List<Step> steps, String tooLate) {

    public Rule {
        steps = List.copyOf(steps);
    }
}
