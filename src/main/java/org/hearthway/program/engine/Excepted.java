package org.hearthway.program.engine;

import java.time.LocalDate;

/**
 * Leave to do an exercise although a rule of care of the child's path forbids the movement. It is for the rule as it stood
 * when leave was given: a rule that begins later, because a stage was put off or another one came, forbids anew.
 *
 * @param tag the movement, as in {@code content/precautions.yaml}
 * @param begins the first day of the rule that leave was given for; rules that begin later are not meant
 * @param until the first day on which leave no longer holds
 * @param reason why, 3 to 500 characters
 */
public record Excepted(String tag, LocalDate begins, LocalDate until, String reason) {

    /** Whether leave holds on a day, for a rule about the movement that begins on {@code ruleBegins}. */
    public boolean covers(String movement, LocalDate ruleBegins, LocalDate day) {
        return tag.equals(movement) && !ruleBegins.isAfter(begins) && day.isBefore(until);
    }
}
