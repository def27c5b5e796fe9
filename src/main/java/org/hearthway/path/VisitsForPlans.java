package org.hearthway.path;

import java.time.LocalDateTime;
import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;

/** Which visits are booked for what plans ask for; the part that keeps visits answers. */
public interface VisitsForPlans {

    /**
     * A booked visit that lies ahead.
     *
     * @param purpose what it was booked for: {@code path/stage/visit}, numbered as in {@link
     *     org.hearthway.path.engine.Plan.VisitWindow}
     */
    record Booked(String purpose, Bilingual kind, LocalDateTime start) {}

    /** The visits of a child that are booked for something and lie ahead, soonest first. */
    List<Booked> ahead(ChildId child);
}
