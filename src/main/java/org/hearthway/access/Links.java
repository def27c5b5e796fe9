package org.hearthway.access;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Links that let a person do one thing without signing in. The token is derived from the row's identifier with a key
 * that is kept outside the database, so a copy of the tables holds no usable token.
 */
public interface Links {

    /** What a link is for. */
    enum Purpose {
        /** Set a password for an account; once. */
        SET_PASSWORD,
        /** Become the first administrator of a clinic that has none; once. */
        FIRST_ADMINISTRATOR,
        /** Answer a visit; until the visit is over. */
        ANSWER_VISIT,
        /** Read the emergency sheet of a child; for a short while. */
        EMERGENCY_SHEET
    }

    /** A link that holds: its identifier, what it is for, and about what. */
    record Link(UUID id, Purpose purpose, UUID subject, Instant expires) {}

    /** Makes a link and stores it; not yet told to anyone. */
    Link create(Purpose purpose, UUID subject, Instant expires);

    /** The token that opens the link: at least 128 unguessable bits, fit for an address. */
    String token(UUID link);

    /** The link a token opens, when it is whole, unused, not expired and for this purpose. Changes nothing. */
    Optional<Link> open(Purpose purpose, String token);

    /** Uses a link up. Returns false when it was used or dead already: of two at once, one wins. */
    boolean use(UUID link);

    /** Moves the end of a link, for instance when its visit moved. */
    void extend(UUID link, Instant expires);

    /** Ends all links for a subject. */
    void revoke(Purpose purpose, UUID subject);
}
