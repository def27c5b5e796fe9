package org.hearthway.path;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Remark;
import org.hearthway.path.engine.Template;

/** A child's plan on its pathway. */
public interface Plans {

    /** A plan and the version of what was decided for it. */
    record ChildPlan(Plan plan, long version) {}

    /** What a person wants to change: a stage's first day. */
    sealed interface Change {
        /** The stage. */
        String stage();

        /** It happened on that day, or the clinic has fixed it (an operation date). */
        record Fix(String stage, LocalDate day) implements Change {}

        /** It shall be planned on that day, whatever the rule says. */
        record SetByHand(String stage, LocalDate day) implements Change {}

        /** Back to the rule: a date given earlier counts no more. */
        record ByRule(String stage) implements Change {}

        /** It ended on that day, in this way. */
        record End(String stage, String outcome, LocalDate day) implements Change {}

        /** It comes on the plan, though it is there only if needed. */
        record Add(String stage) implements Change {}

        /** It leaves the plan. */
        record Skip(String stage) implements Change {}

        /** One of its rules, counted from 0, is another one for this child. */
        record OwnRule(String stage, int at, Template.After rule) implements Change {}

        /** That rule is the path's own again. */
        record SharedRule(String stage, int at) implements Change {}
    }

    /** A stage whose first day would move. */
    record Move(String stage, Bilingual name, LocalDate from, LocalDate to) {}

    /**
     * What a change does to a plan.
     *
     * @param moves stages whose first day moves
     * @param coming stages that come on the plan
     * @param leaving stages that leave it
     */
    record Effect(List<Move> moves, List<Bilingual> coming, List<Bilingual> leaving) {}

    /** What a change would do; nothing is saved. */
    record Preview(Plan before, Plan after, Effect effect, boolean outsideTheRule, long version) {}

    /** What a decision was about. */
    enum Kind {
        BEGUN,
        FIXED,
        SET_BY_HAND,
        BACK_TO_RULE,
        ENDED,
        ADDED,
        SKIPPED,
        OWN_RULE,
        SHARED_RULE,
        UNDONE
    }

    /**
     * One decision about a child's path, as it was taken. None is altered; a later one supersedes it.
     *
     * @param version counted up per child, from 1
     * @param name the path begun or the stage dated
     * @param day the day given, if one was
     * @param outcome how a stage ended, if it did
     * @param undone whether it counts no more, because it was taken back
     */
    record Decision(
            long version,
            Kind kind,
            Bilingual name,
            Optional<LocalDate> day,
            Optional<Bilingual> outcome,
            boolean undone,
            String reason,
            Optional<AccountId> by,
            Instant at) {}

    /** The pathways that a child can begin. */
    List<Template> pathways();

    /** The child's plan as of today; empty while no path was begun. */
    Optional<ChildPlan> plan(Viewer viewer, ChildId child);

    /**
     * The plans as of today as they would be had nothing been decided after a moment, to tell what changed since: what
     * was decided and taken back after it leaves no trace.
     */
    List<Plan> asDecidedBy(Viewer viewer, ChildId child, Instant moment);

    /** The plan of every child on a path, as of today; for staff and the machine. */
    Map<ChildId, Plan> all(Viewer viewer);

    /** Everything that was decided for a child's path, newest first; for staff. */
    List<Decision> decisions(Viewer viewer, ChildId child);

    /**
     * Begins a path on a day, at most 20 years back and 2 years ahead; a child is on one path at a time, the former
     * plan stays readable in the trail.
     *
     * @param reason kept with it, 3 to 500 characters
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    void begin(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason);

    /**
     * Begins a path that the team and the family chose: at the stage where it begins for a child whose tests were done,
     * or at the first when the path names none; otherwise as {@link #begin}.
     */
    void beginChosen(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason);

    /** What the child's path is usually chosen for, held against this child; empty while no path was begun. */
    List<Remark> advice(Viewer viewer, ChildId child);

    /**
     * The same for a path that the child would begin on a day; nothing is saved.
     *
     * @throws org.hearthway.base.Invalid when the path is not known or the day lies out of bounds
     */
    List<Remark> adviceIfBegun(Viewer viewer, ChildId child, String pathway, LocalDate day);

    /**
     * What would move if the change were made.
     *
     * @throws org.hearthway.base.Invalid when the day lies out of bounds or would put a stage before the one in front
     *     of it
     */
    Preview preview(Viewer viewer, ChildId child, Change change);

    /**
     * Makes the change.
     *
     * @param reason kept with it, 3 to 500 characters
     * @param seen the version of the plan that the person saw
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else changed the plan in between
     */
    void apply(Viewer viewer, ChildId child, Change change, String reason, long seen);

    /**
     * What taking a decision back would do; nothing is saved.
     *
     * @throws org.hearthway.base.Invalid when the decision does not count
     */
    Effect effectOfUndo(Viewer viewer, ChildId child, long version);

    /**
     * Takes a decision back: the plan becomes what it would be had it never been taken; taking it back can be taken
     * back too.
     *
     * @param version of the decision, which counts
     * @param reason kept with it, 3 to 500 characters
     * @param seen the version of the plan that the person saw
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else changed the plan in between
     */
    void undo(Viewer viewer, ChildId child, long version, String reason, long seen);

    /** The rules of care that hold for a child on a day. */
    List<Plan.Care> precautions(Viewer viewer, ChildId child, LocalDate day);

    /** Why a stage of a plan begins when it does, or why it gets no day, in both languages. */
    Bilingual why(Plan plan, Plan.Planned stage);
}
