package org.hearthway.paper;

import java.time.Instant;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The emergency sheet of a child, the plan on it, and the short-lived link under which a stranger opens it. */
public interface EmergencySheets {

    /** Where a sheet stands for a while: an address within the program, and until when. */
    record Address(String path, Instant until) {}

    /** The sheet as it is now; for anyone who may see the family's pages of the child. */
    EmergencySheet sheet(Viewer viewer, ChildId child);

    /**
     * Makes a link that shows the sheet to whoever holds it, without signing in, for as long as the clinic's setting
     * says. Making it is written to the trail, and so is every look.
     */
    Address open(Viewer viewer, ChildId child);

    /** The plan that was signed last. */
    Optional<EmergencySheet.Plan> plan(Viewer viewer, ChildId child);

    /**
     * Signs a plan in the viewer's name; for physicians.
     *
     * @param seen number of the plan that the person saw, 0 for none
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else signed one in between
     */
    EmergencySheet.Plan sign(Viewer viewer, ChildId child, EmergencySheet.PlanData data, long seen);
}
