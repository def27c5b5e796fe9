package org.hearthway.visit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The visits of the clinic's children. */
public interface Visits {

    /** What a coordinator books. */
    record Booking(String kind, LocalDateTime start, int minutes, String place, Optional<String> purpose) {}

    /**
     * What one caregiver said of the time that a visit has now.
     *
     * @param by who said it
     * @param answer yes, or asked to move
     * @param wish what suits better, when asked to move
     * @param at when
     */
    record Given(AccountId by, Visit.Answer answer, String wish, Instant at) {}

    /** The kinds of visit, by English name. */
    List<VisitKind> kinds();

    /** A child's visits that are not over, soonest first, cancelled ones left out. */
    List<Visit> upcoming(Viewer viewer, ChildId child);

    /** A child's visits of the past, newest first, at most {@code limit}. */
    List<Visit> past(Viewer viewer, ChildId child, int limit);

    /**
     * The visits to come of which caregivers said different things, with all that they said; for staff. The slot stays
     * until the office settles it: says yes, moves or cancels.
     */
    Map<VisitId, List<Given>> disputed(Viewer viewer);

    /** Whether caregivers said different things of a visit; tells not what. */
    boolean isDisputed(Viewer viewer, VisitId visit);

    /** All booked visits from the first day to the last, both included, soonest first; for staff and the machine. */
    List<Visit> between(Viewer viewer, LocalDate from, LocalDate until);

    /**
     * One visit. A caregiver is told what the caregiver itself said of it, not what another one wrote.
     *
     * @throws org.hearthway.base.NotAvailable when there is none or it is not this viewer's
     */
    Visit get(Viewer viewer, VisitId visit);

    /**
     * When the visit was to start as it stood at a moment; empty when it was not booked then.
     *
     * @throws org.hearthway.base.NotAvailable when there is none or it is not this viewer's
     */
    Optional<LocalDateTime> startAsOf(Viewer viewer, VisitId visit, Instant moment);

    /**
     * Books a visit.
     *
     * @throws org.hearthway.base.Invalid naming field and bound: not in the past, on an open day, 5 to 480 minutes
     */
    VisitId book(Viewer viewer, ChildId child, Booking booking);

    /**
     * Moves a visit; the answer falls back to none, the sequence goes up.
     *
     * @param seen the version that the person saw
     */
    void move(Viewer viewer, VisitId visit, LocalDateTime start, long seen);

    /** Cancels a visit. */
    void cancel(Viewer viewer, VisitId visit, long seen);

    /** Notes whether the child came. */
    void attended(Viewer viewer, VisitId visit, boolean came, long seen);

    /**
     * The family says yes to the time it was shown.
     *
     * @param sequence the sequence shown; a visit moved since is not confirmed
     * @throws org.hearthway.base.Overtaken when the visit moved since
     */
    void confirm(Viewer viewer, VisitId visit, int sequence);

    /** The family asks to move; the old slot stays until the clinic replaces it. The wish is at most 500 characters. */
    void askToMove(Viewer viewer, VisitId visit, int sequence, String wish);
}
