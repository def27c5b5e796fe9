package org.hearthway.reminder;

import java.time.Instant;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * Mail to people of the clinic about what cannot wait for the morning. It is as neutral as the family's, leads to what
 * needs a look, and goes at any hour; not while nobody watches the child.
 */
public interface StaffMail {

    /**
     * One mail.
     *
     * @param key names it once and for all; a second one of that name is the same mail
     * @param cause what it is about, at most 60 characters; see {@link #noLonger}
     * @param to the person of the clinic
     * @param text a text for the team in {@code content/messages/texts}
     * @param since the moment that the text names
     */
    record Note(String key, String cause, AccountId to, String text, Instant since) {}

    /** Puts a mail about a child into the outbox, within the caller's transaction. */
    void send(Viewer viewer, ChildId child, Note note);

    /** Its cause fell away: what has not left yet stays, within the caller's transaction. */
    void noLonger(Viewer viewer, ChildId child, String cause);
}
