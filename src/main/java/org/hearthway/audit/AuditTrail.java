package org.hearthway.audit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The trail of looks, changes and refusals. Rows are added, never altered. It holds no clinical text. */
public interface AuditTrail {

    /** One line of the trail. */
    record Line(long number, Instant at, String actor, Optional<ChildId> child, String what) {}

    /** Writes that the viewer looked at a child's record; within the caller's transaction. */
    void looked(Viewer viewer, ChildId child, String place);

    /** Writes that the viewer was refused; in a transaction of its own, so that it stays when the request rolls back. */
    void refused(Viewer viewer, Action action, Optional<ChildId> child);

    /** Writes something about the clinic at large, for instance an account invited; within the caller's transaction. */
    void happened(Viewer viewer, String what);

    /** The newest lines first, at most {@code limit}; for administrators. */
    List<Line> newest(Viewer viewer, int limit);
}
