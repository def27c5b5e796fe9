package org.hearthway.sign;

import org.hearthway.base.Bilingual;
import org.hearthway.content.Provenance;

/**
 * A sign that needs a call.
 *
 * @param id identifier, such as {@code pump-beep}
 * @param topic whom it concerns
 * @param urgency how soon
 * @param says the sign in plain family words
 * @param provenance source, version, reviews
 */
public record Sign(String id, Topic topic, Urgency urgency, Bilingual says, Provenance provenance) {

    /** Whom a sign concerns. */
    public enum Topic {
        ANY_CHILD,
        SURGERY,
        PUMP,
        STIMULATOR,
        REHAB,
        MEDICINE
    }

    /** How soon to call, most urgent first. */
    public enum Urgency {
        /** The emergency number, right now. */
        NOW,
        /** The clinic's urgent line, today, day or night. */
        URGENT,
        /** The office line, in office hours. */
        HOURS
    }
}
