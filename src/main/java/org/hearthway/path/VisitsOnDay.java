package org.hearthway.path;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;

/** Which visits are booked on a day, whatever for; the part that keeps visits answers. */
public interface VisitsOnDay {

    /** A booked visit that is not over. */
    record Standing(ChildId child, Bilingual kind, LocalDateTime start) {}

    /** The visits of every child on a day by the clinic's clock, soonest first. */
    List<Standing> on(LocalDate day);
}
