package org.hearthway.caseload.engine;

/** How soon a family's report asks for an answer, most urgent first. */
public enum Urgency {
    /** The emergency number was the one to call. */
    NOW,
    /** The urgent line was the one to call. */
    URGENT,
    /** The office line was the one to call. */
    HOURS,
    /** A note to the team that names no sign. */
    NOTE
}
