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
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Remark;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.network.Span;

/** A child's plans on its pathways: it may be on several at once, such as a pump and a block of therapy. */
public interface Plans {

    /**
     * One of a child's plans.
     *
     * @param course what was said for it
     * @param opened by stage the moment from which it is in its present run: when somebody said that the path begins, or
     *     that the way goes back to the stage or to one in front of it
     * @param version of all that was decided for the child
     */
    record ChildPlan(Plan plan, Course course, Map<String, Instant> opened, long version) {

        public ChildPlan {
            opened = Map.copyOf(opened);
        }

        /** Whether something was done in a run of the stage that is over: the stage has been opened anew since. */
        public boolean isOfAnEarlierRun(Template.Stage stage, Instant done) {
            var since = opened.get(stage.id());
            return since != null && done.isBefore(since);
        }
    }

    /** What stands as the source of what nobody has published. */
    String NO_SOURCE = "common practice, no source";

    /** How a path begins where a child is on one already. */
    enum Beginning {
        /** In the place of every other. */
        INSTEAD,
        /** Beside the others. */
        BESIDE
    }

    /**
     * Where and when a path begins.
     *
     * @param stage the stage at which it begins; empty for the first one
     * @param day the first day of that stage
     * @param before by stage in front of it the first day on which it was done, elsewhere or here, where that is known
     */
    record Start(String pathway, Beginning how, Optional<String> stage, LocalDate day, Map<String, LocalDate> before) {

        public Start {
            before = Map.copyOf(before);
        }

        /** At the first stage. */
        public static Start atFirst(String pathway, Beginning how, LocalDate day) {
            return new Start(pathway, how, Optional.empty(), day, Map.of());
        }
    }

    /**
     * What beginning a path would do.
     *
     * @param plan the path as it would be
     * @param advice what it is usually chosen for, held against this child
     * @param effect on the child's other paths
     * @param version of all that was decided for the child
     */
    record Outlook(Plan plan, List<Remark> advice, Effect effect, long version) {

        public Outlook {
            advice = List.copyOf(advice);
        }
    }

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
     * What a decision does to a child's plans.
     *
     * @param moves stages whose first day moves
     * @param coming stages that come on a plan, or paths that come whole
     * @param leaving stages that leave a plan, or paths that leave whole
     * @param late stages that would lie outside of what their rules allow
     * @param noDay stages that no day would be left for
     * @param visits booked visits that would no longer lie where the plan asks for them
     */
    record Effect(
            List<Move> moves,
            List<Bilingual> coming,
            List<Bilingual> leaving,
            List<Bilingual> late,
            List<Bilingual> noDay,
            List<VisitsForPlans.Booked> visits) {}

    /** What a change would do; nothing is saved. */
    record Preview(Plan before, Plan after, Effect effect, boolean outsideTheRule, long version) {}

    /** What a decision was about. */
    enum Kind {
        BEGUN,
        BESIDE,
        CLOSED,
        AWAY,
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
     * @param name the path begun or ended, or the stage dated
     * @param path which path it belongs to; empty when it holds for all of them
     * @param day the day given, if one was
     * @param last the last of the days given, if there were several
     * @param outcome how a stage ended, if it did
     * @param undone whether it counts no more, because it was taken back
     */
    record Decision(
            long version,
            Kind kind,
            Bilingual name,
            Optional<Bilingual> path,
            Optional<LocalDate> day,
            Optional<LocalDate> last,
            Optional<Bilingual> outcome,
            boolean undone,
            String reason,
            Optional<AccountId> by,
            Instant at) {}

    /** The pathways that a child can begin. */
    List<Template> pathways();

    /** The child's plans as of today: first those that go on, each in the order they were begun. */
    List<ChildPlan> plans(Viewer viewer, ChildId child);

    /**
     * The plan on one of the child's paths as the path alone would make it from what happened: without the days, gaps
     * and stages that the team chose for this child. To compare with; for staff, empty when the child is not on it.
     */
    Optional<Plan> byPathAlone(Viewer viewer, ChildId child, String pathway);

    /**
     * The plans as of today as they would be had nothing been decided after a moment, to tell what changed since: what
     * was decided and taken back after it leaves no trace.
     */
    List<Plan> asDecidedBy(Viewer viewer, ChildId child, Instant moment);

    /** The plans of every child on a path, as of today, in the same order; for staff and the machine. */
    Map<ChildId, List<Plan>> all(Viewer viewer);

    /** Everything that was decided for a child's path, newest first; for staff. */
    List<Decision> decisions(Viewer viewer, ChildId child);

    /**
     * Begins a path on a day, at most 20 years back and 2 years ahead. A child is on a path once: begun again, it is
     * begun anew. A plan whose place is taken stays readable in the trail.
     *
     * @param reason kept with it, 3 to 500 characters
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    void begin(Viewer viewer, ChildId child, String pathway, Beginning how, LocalDate day, String reason);

    /**
     * The same at whatever stage, for a child who comes from elsewhere in the middle of a path: what stands in front of
     * it counts as done before, and is on the plan where its day is known.
     *
     * @param seen the version of the plan that the person saw
     * @throws org.hearthway.base.Invalid naming field and bound; the field of a stage done before is {@code before/stage}
     * @throws org.hearthway.base.Overtaken when somebody else changed the plan in between
     */
    void begin(Viewer viewer, ChildId child, Start start, String reason, long seen);

    /**
     * What that would do; nothing is saved.
     *
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    Outlook outlook(Viewer viewer, ChildId child, Start start);

    /**
     * Begins a path that the team and the family chose, in the place of every other: at the stage where it begins for a
     * child whose tests were done, or at the first when the path names none; otherwise as {@link #begin}.
     */
    void beginChosen(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason);

    /**
     * What ending a path would do; nothing is saved.
     *
     * @throws org.hearthway.base.Invalid when the child is not on it, or the day lies before its first or ahead
     */
    Effect effectOfClosing(Viewer viewer, ChildId child, String pathway, LocalDate day);

    /**
     * Ends a path: what would have begun after the day is not on it any more; rules of care that hold go on.
     *
     * @param reason kept with it, 3 to 500 characters
     * @param seen the version of the plan that the person saw
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else changed the plan in between
     */
    void close(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason, long seen);

    /**
     * What it would do if the family could not come on some days; nothing is saved.
     *
     * @throws org.hearthway.base.Invalid when they are over, too many or too far ahead
     */
    Effect effectOfAway(Viewer viewer, ChildId child, Span days);

    /**
     * Keeps days on which the family cannot come: no stage for which the clinic is needed begins then, on any path.
     *
     * @param days at most 366 of them, the last at most 2 years ahead
     * @param reason kept with it, 3 to 500 characters
     * @param seen the version of the plan that the person saw
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else changed the plan in between
     */
    void away(Viewer viewer, ChildId child, Span days, String reason, long seen);

    /** What one of the child's paths is usually chosen for, held against this child; empty when it is not on it. */
    List<Remark> advice(Viewer viewer, ChildId child, String pathway);

    /**
     * What would move if the change were made to one of the child's paths.
     *
     * @throws org.hearthway.base.Invalid when the day lies out of bounds or would put a stage before the one in front
     *     of it
     */
    Preview preview(Viewer viewer, ChildId child, String pathway, Change change);

    /**
     * Makes the change.
     *
     * @param reason kept with it, 3 to 500 characters
     * @param seen the version of the plan that the person saw
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else changed the plan in between
     */
    void apply(Viewer viewer, ChildId child, String pathway, Change change, String reason, long seen);

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

    /** The rules of care that hold for a child on a day, of all its paths. */
    List<Plan.Care> precautions(Viewer viewer, ChildId child, LocalDate day);

    /** Why a stage of a plan begins when it does, or why it gets no day, in both languages. */
    Bilingual why(Plan plan, Plan.Planned stage);

    /**
     * Why a value of a plan's path is not what the path as it came says: that it is the clinic's own and since when;
     * empty when it is the path's.
     */
    Optional<Bilingual> why(Plan plan, ValuePlace place);

    /** A way out of a clash, as something to do, in both languages. */
    Bilingual way(Plan plan, Clash.Way way);
}
