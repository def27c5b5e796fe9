package org.hearthway.equipment;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** For which casts and equipment somebody at the clinic must be seen. */
public interface Fittings {

    /** Why a visit is asked for. */
    enum Reason {
        /** A cast is changed or comes off. */
        CAST,
        /** A splint or a piece of equipment does not fit any more. */
        MEND
    }

    /**
     * One visit asked for.
     *
     * @param thing the series of casts, or the item
     * @param day of a cast, the next planned day; of an item, the day on which it was seen not to fit
     */
    record Fitting(Reason reason, UUID thing, LocalDate day) {}

    /** Of each child that has one, earliest first; for staff and the machine. */
    Map<ChildId, List<Fitting>> all(Viewer viewer);
}
