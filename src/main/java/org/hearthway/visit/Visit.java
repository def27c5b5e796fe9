package org.hearthway.visit;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.hearthway.base.ChildId;

/**
 * A visit. What is planned is a local date and time with the clinic's zone; an instant is computed late.
 *
 * @param id identifier
 * @param child whose
 * @param kind what kind
 * @param start wall-clock start at the clinic
 * @param zone the clinic's zone
 * @param minutes length
 * @param place room or address, may be empty
 * @param purpose what it answers, such as {@code refill} or {@code sdr/review-6w/check}; empty for none
 * @param answer what the family said of this very time
 * @param wish when the family asked to move: what suits better
 * @param state booked, over or cancelled
 * @param sequence counts the moves; an answer is for one sequence only
 * @param version the version that was read
 */
public record Visit(
        VisitId id,
        ChildId child,
        VisitKind kind,
        LocalDateTime start,
        ZoneId zone,
        int minutes,
        String place,
        Optional<String> purpose,
        Answer answer,
        String wish,
        State state,
        int sequence,
        long version) {

    /** What the family said. */
    public enum Answer {
        NONE,
        CONFIRMED,
        ASKED_TO_MOVE
    }

    /** What became of it. */
    public enum State {
        BOOKED,
        ATTENDED,
        NOT_ATTENDED,
        CANCELLED
    }

    /**
     * The instant it starts. A wall time that does not exist moves later by the gap; one that exists twice is the
     * first of the two (java.time's rule, written down in DEVELOPERS.md).
     */
    public Instant startsAt() {
        return start.atZone(zone).toInstant();
    }

    /** The next version of it, in a state. */
    public Visit inState(State next) {
        return new Visit(
                id, child, kind, start, zone, minutes, place, purpose, answer, wish, next, sequence, version + 1);
    }

    /** The instant it is over. */
    public Instant endsAt() {
        return startsAt().plusSeconds(minutes * 60L);
    }
}
