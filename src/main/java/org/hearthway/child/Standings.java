package org.hearthway.child;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Where each child stands with the clinic. One word stops everything that would be asked of the family. */
public interface Standings {

    /**
     * What a person says of a child.
     *
     * @param status the new status, not the present one
     * @param reason 1 to 500 characters
     * @param handover asked for when the status needs a receiving service, refused otherwise
     */
    record Saying(Status status, String reason, Optional<Standing.Handover> handover) {}

    /** The present standing of a child; for anyone who may see the family's pages of it. */
    Standing now(Viewer viewer, ChildId child);

    /** Days on which nothing is asked of the family. */
    record Pause(LocalDate from, Optional<LocalDate> until) {

        /** Whether the day lies in it; {@code until} is the first day after it. */
        public boolean holdsOn(LocalDate day) {
            return !day.isBefore(from)
                    && until.filter(end -> !day.isBefore(end)).isEmpty();
        }
    }

    /** The clinic's days on which nothing is asked, oldest first; what was taken back never was. */
    List<Pause> pauses(Viewer viewer, ChildId child);

    /** The present status, which cannot change before the caller's transaction ends. */
    Status hold(Viewer viewer, ChildId child);

    /** Everything that was said, newest first; for the team. */
    List<Standing> history(Viewer viewer, ChildId child);

    /** The children that are not active, each with its status; for staff lists and the machine. */
    Map<ChildId, Status> notActive(Viewer viewer);

    /** Deaths that wait for a second person; for staff. */
    Set<ChildId> waiting(Viewer viewer);

    /**
     * Says it. In the same transaction everything stops that the status stops.
     *
     * @param seen number of the standing that the person saw
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else spoke in between
     */
    void say(Viewer viewer, ChildId child, Saying saying, long seen);

    /**
     * Confirms a death as the second person.
     *
     * @throws org.hearthway.base.Invalid when it is the first person again, also under a second account
     * @throws org.hearthway.base.Overtaken when it is no longer what waits
     */
    void confirm(Viewer viewer, ChildId child, long seen);

    /**
     * Takes back what was said last; what it had stopped goes on exactly as it was.
     *
     * @param reason 1 to 500 characters
     * @throws org.hearthway.base.Invalid when there is nothing to take back, or no reason
     * @throws org.hearthway.base.Overtaken when somebody else spoke in between
     */
    void takeBack(Viewer viewer, ChildId child, String reason, long seen);
}
