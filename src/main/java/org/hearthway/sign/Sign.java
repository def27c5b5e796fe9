package org.hearthway.sign;

import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.content.Provenance;

/**
 * A sign that needs a call.
 *
 * @param id identifier, such as {@code pump-beep}
 * @param topic whom it concerns
 * @param urgency how soon
 * @param drug what of a pump's drug it may show, if it shows anything of it
 * @param says the sign in plain family words
 * @param provenance source, version, reviews
 */
public record Sign(
        String id, Topic topic, Urgency urgency, Optional<Drug> drug, Bilingual says, Provenance provenance) {

    /** A sign that shows nothing of a drug. */
    public Sign(String id, Topic topic, Urgency urgency, Bilingual says, Provenance provenance) {
        this(id, topic, urgency, Optional.empty(), says, provenance);
    }

    /** What a sign shows of the drug in a pump. */
    public enum Drug {
        TOO_LITTLE,
        TOO_MUCH
    }

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
