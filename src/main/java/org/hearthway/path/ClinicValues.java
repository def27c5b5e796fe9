package org.hearthway.path;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.Fitted;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.ValuePlace;

/**
 * A clinic's own values in the paths: gaps, lengths, rhythms, how long a rule of care holds and by when a task is due
 * differ between centres.
 * The shipped file stays as it is; what the clinic says stands over it until it is taken back. Nothing is altered: each
 * change is kept with its author and reason, and so is taking it back.
 */
public interface ClinicValues {

    /** Fewest characters of a reason. */
    int REASON_MIN = 3;

    /** Most characters of a reason. */
    int REASON_MAX = 500;

    /**
     * The clinic's own value at a place.
     *
     * @param amount what counts in this clinic
     * @param shipped what the file said when it was given
     * @param number the change that gave it
     */
    record Own(Amount amount, Amount shipped, long number, String reason, Optional<AccountId> by, Instant at) {}

    /**
     * A value of a path.
     *
     * @param name within its rule, such as "usual"
     * @param shipped what the file says now
     * @param own the clinic's own value that counts in its place
     */
    record Value(ValuePlace place, Bilingual name, Amount shipped, Optional<Own> own) {}

    /**
     * Values that belong together.
     *
     * @param name what they are about
     * @param source of the shipped values
     */
    record Rule(Bilingual name, String source, List<Value> values) {

        public Rule {
            values = List.copyOf(values);
        }
    }

    /** A stage with all its values. */
    record StageValues(String stage, Bilingual name, List<Rule> rules) {

        public StageValues {
            rules = List.copyOf(rules);
        }
    }

    /**
     * A clinic's own value that no longer fits the shipped path and does not count.
     *
     * @param name with its stage and rule
     */
    record LeftOut(ValuePlace place, Bilingual name, Own own, Fitted.Why why) {}

    /**
     * What a change did to one value.
     *
     * @param name with its stage and rule
     * @param before what counted before it
     * @param after what it gave; empty for the shipped value again
     */
    record Line(ValuePlace place, Bilingual name, Amount before, Optional<Amount> after) {}

    /**
     * A change, as it was made; none is altered.
     *
     * @param number counted up per path, from 1
     * @param lines what it gave; of one that takes another back, what the other gave
     * @param undoes the change that it takes back
     * @param undone whether it counts no more, because it was taken back
     */
    record Change(
            long number,
            List<Line> lines,
            Optional<Long> undoes,
            boolean undone,
            String reason,
            Optional<AccountId> by,
            Instant at) {

        public Change {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A path with its values.
     *
     * @param leftOut what the clinic gave and what no longer fits
     * @param changes all that were made, the newest first
     * @param version counted up with each change
     */
    record PathOfClinic(
            String pathway,
            Bilingual name,
            List<StageValues> stages,
            List<LeftOut> leftOut,
            List<Change> changes,
            long version) {

        public PathOfClinic {
            stages = List.copyOf(stages);
            leftOut = List.copyOf(leftOut);
            changes = List.copyOf(changes);
        }

        /** How many values are the clinic's own. */
        public long ownValues() {
            return stages.stream()
                    .flatMap(stage -> stage.rules().stream())
                    .flatMap(rule -> rule.values().stream())
                    .filter(value -> value.own().isPresent())
                    .count();
        }
    }

    /** A rule of care that would hold on other days; the last day is the first on which it no longer holds. */
    record CareMove(Bilingual says, LocalDate from, LocalDate until, LocalDate newFrom, LocalDate newUntil) {}

    /**
     * What a change does to one child's plan, from today on.
     *
     * @param moves stages that begin on another day
     * @param ends stages that begin as before and end on another day
     * @param cares rules of care that hold on other days
     * @param familyTasks tasks of the family that are due on another day, because they count otherwise from their
     *     stage's first day
     * @param staffTasks the same of the team
     * @param visits how many windows for visits change
     * @param noDay stages that get no day any more
     * @param unfit booked visits that would no longer lie where the plan asks for them
     */
    record ChildEffect(
            ChildId child,
            List<Plans.Move> moves,
            List<Plans.Move> ends,
            List<CareMove> cares,
            List<Plans.Move> familyTasks,
            List<Plans.Move> staffTasks,
            int visits,
            List<Bilingual> noDay,
            List<VisitsForPlans.Booked> unfit) {

        public ChildEffect {
            moves = List.copyOf(moves);
            ends = List.copyOf(ends);
            cares = List.copyOf(cares);
            familyTasks = List.copyOf(familyTasks);
            staffTasks = List.copyOf(staffTasks);
            noDay = List.copyOf(noDay);
            unfit = List.copyOf(unfit);
        }

        /** Whether anything of it is the family's to know; by when the team does something is not. */
        public boolean concernsTheFamily() {
            return visits > 0
                    || Stream.of(moves, ends, cares, familyTasks, noDay, unfit).anyMatch(list -> !list.isEmpty());
        }
    }

    /**
     * What a change would do; nothing is saved.
     *
     * @param children those whose plans would change
     * @param onPath how many children are on the path
     * @param again values that were left out and would count again
     */
    record Preview(List<ChildEffect> children, int onPath, List<Bilingual> again, long version) {

        public Preview {
            children = List.copyOf(children);
            again = List.copyOf(again);
        }
    }

    /** Every path with its values, in the order of the content; for administrators. */
    List<PathOfClinic> all(Viewer viewer);

    /**
     * What a change would do.
     *
     * @param wishes by place the value wished for; empty for the shipped one
     * @throws org.hearthway.base.Invalid naming the value, its bound and the way out; the field is {@link #field}
     */
    Preview preview(Viewer viewer, String pathway, Map<ValuePlace, Optional<Amount>> wishes);

    /**
     * Makes it, as one change. Each child whose plan changes gets its {@link org.hearthway.path.events.PathChanged}.
     *
     * @param reason {@value #REASON_MIN} to {@value #REASON_MAX} characters
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Invalid as a preview, or at {@code reason}
     * @throws org.hearthway.base.Overtaken when somebody changed the path's values in between
     */
    void apply(Viewer viewer, String pathway, Map<ValuePlace, Optional<Amount>> wishes, String reason, long seen);

    /**
     * What taking a change back would do.
     *
     * @throws org.hearthway.base.Invalid when it does not count, or a later one rests on it
     */
    Preview previewUndo(Viewer viewer, String pathway, long number);

    /**
     * Takes a change back: every plan is as if it had never been made. Taking it back can be taken back, too.
     *
     * @param reason {@value #REASON_MIN} to {@value #REASON_MAX} characters
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Invalid as a preview, or at {@code reason}
     * @throws org.hearthway.base.Overtaken when somebody changed the path's values in between
     */
    void undo(Viewer viewer, String pathway, long number, String reason, long seen);

    /** That a rule of care holds as long as it does because the clinic says so, and what the file says; empty else. */
    Optional<Bilingual> why(Template.Precaution rule);

    /** The field that a refusal of a value names. */
    static String field(ValuePlace place) {
        return place.stage() + " " + place.kind() + " " + place.part();
    }
}
