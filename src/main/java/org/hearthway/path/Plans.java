package org.hearthway.path;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Plan;

/** A child's plan on its pathway. */
public interface Plans {

    /** A plan and the version of what was decided for it. */
    record ChildPlan(Plan plan, long version) {}

    /** What a person wants to change: a stage's first day. */
    sealed interface Change {
        /** The stage. */
        String stage();

        /** The day. */
        LocalDate day();

        /** It happened on that day, or the clinic has fixed it (an operation date). */
        record Fix(String stage, LocalDate day) implements Change {}

        /** It shall be planned on that day, whatever the rule says. */
        record SetByHand(String stage, LocalDate day) implements Change {}
    }

    /** A stage whose first day would move. */
    record Move(String stage, Bilingual name, LocalDate from, LocalDate to) {}

    /** What a change would do; nothing is saved. */
    record Preview(Plan before, Plan after, List<Move> moves, boolean outsideTheRule, long version) {}

    /** The pathways that a child can begin. */
    List<org.hearthway.path.engine.Template> pathways();

    /** The child's plan as of today; empty while no path was begun. */
    Optional<ChildPlan> plan(Viewer viewer, ChildId child);

    /** Begins a path on a day; a child is on one path at a time, the former plan stays readable in the trail. */
    void begin(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason);

    /** What would move if the change were made. */
    Preview preview(Viewer viewer, ChildId child, Change change);

    /**
     * Makes the change.
     *
     * @param reason kept with it, 3 to 500 characters
     * @param seen the version of the plan that the person saw
     * @throws org.hearthway.base.Overtaken when somebody else changed the plan in between
     */
    void apply(Viewer viewer, ChildId child, Change change, String reason, long seen);

    /** The rules of care that hold for a child on a day. */
    List<Plan.Care> precautions(Viewer viewer, ChildId child, LocalDate day);

    /** Why a stage begins when it does, in one sentence in both languages. */
    Bilingual why(Plan.Planned stage);
}
