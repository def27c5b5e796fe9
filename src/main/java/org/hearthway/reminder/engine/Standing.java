package org.hearthway.reminder.engine;

/** How the matter stands that a reminder is about. */
public enum Standing {
    /** A visit without an answer; a deadline without a visit. */
    OPEN,
    /** A visit that the family asked to move. */
    ASKED_TO_MOVE,
    /** A deadline with a visit in time that the family has not confirmed. */
    BOOKED,
    /** A visit that the family confirmed; a deadline with such a visit in time. */
    CONFIRMED
}
