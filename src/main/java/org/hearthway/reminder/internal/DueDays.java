package org.hearthway.reminder.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hearthway.base.ChildId;

/** Days that are no visits and of which a family is reminded. */
interface DueDays {

    /**
     * A check for which a visit is to be booked.
     *
     * @param visitKind the kind of visit at which it is done
     * @param by the day by which it should be done
     */
    record Check(String visitKind, LocalDate by) {}

    /** The days on which something that the child wears or uses is looked at. */
    Set<LocalDate> atHome(ChildId child);

    /** The days on which a checked taper calendar changes a dose. */
    Set<LocalDate> steps(ChildId child);

    /** The checks of hips and spine that are due next. */
    List<Check> checks(ChildId child);
}
