package org.hearthway.reminder;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.visit.VisitId;

/** Messages to families, planned and sent; and calls that a person must make. */
public interface Outbox {

    /** How a message travels. */
    enum Channel {
        MAIL,
        /** A person of the clinic calls. */
        CALL
    }

    /** Where a message stands. */
    enum State {
        PLANNED,
        /** A coordinator holds it back. */
        HELD,
        SENDING,
        SENT,
        /** The server took none so far; the next try is at {@link Message#due}. */
        RETRYING,
        /** Was in flight when the program stopped: may have gone twice, under one Message-ID. */
        MAY_HAVE_GONE_TWICE,
        /** Written to the outgoing folder because no mail server is set. */
        WRITTEN_TO_FOLDER,
        /** Tried until it was of no more use. */
        NOT_REACHED,
        /** A call to make. */
        TO_CALL,
        /** The call was made; the person answered. */
        CALLED,
        CANCELLED
    }

    /**
     * One message or call.
     *
     * @param address mail address, or the number to call
     * @param about the kind of visit, in the viewer's language
     * @param body the words, with a mark where the link stands; of a call, what it is about in the viewer's language
     * @param due when it goes, or went last
     * @param note why the last try failed, or what was noted of a call
     * @param urgent whether it comes before everything else
     */
    record Message(
            UUID id,
            ChildId child,
            AccountId person,
            String personName,
            String address,
            Channel channel,
            Language language,
            ZoneId zone,
            Optional<VisitId> visit,
            String about,
            String subject,
            String body,
            Instant due,
            State state,
            int tries,
            String note,
            boolean urgent,
            long version) {}

    /** Messages that still matter: not cancelled, and due or sent within the last 30 days or to come. */
    List<Message> board(Viewer viewer);

    /** All messages about a child, newest first. */
    List<Message> of(Viewer viewer, ChildId child);

    /** Sends now, whatever the hour: the coordinator decides. */
    void sendNow(Viewer viewer, UUID message, long seen);

    /** Holds a message back, or lets it go again. */
    void hold(Viewer viewer, UUID message, boolean held, long seen);

    /**
     * Notes a call, one that was to be made or one in place of a mail that reached nobody.
     *
     * @param reached whether somebody answered
     * @param note at most 500 characters
     * @throws org.hearthway.base.Invalid when the note is too long, or the message is neither of the two
     */
    void called(Viewer viewer, UUID message, boolean reached, String note, long seen);

    /** Whether mail goes out, or is written to the outgoing folder. */
    boolean sendsMail();
}
