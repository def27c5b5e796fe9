package org.hearthway.program;

import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Plan;

/** When the rules of care of a child's path shut exercises off, and when they open them again. */
public interface CareTurns {

    /**
     * An exercise is shut off from a day on, or open again.
     *
     * @param exercise identifier in the library
     * @param care the rule that shuts it off, or that ended
     * @param day the first day on which it is so
     * @param forbids whether it is shut off
     * @param inProgram whether the child's program has it on some day from then on
     */
    record Turn(String exercise, Plan.Care care, LocalDate day, boolean forbids, boolean inProgram) {}

    /** Something of the program that is not done on a day because a rule of care forbids it. */
    record Resting(Exercise exercise, Plan.Care care) {}

    /** Most days looked at at once. */
    int MOST_DAYS = 92;

    /**
     * The turns from one day to another, both included, by day and then by English name; those of the program first on
     * each day. An exercise that was given leave from the rule does not turn.
     */
    List<Turn> between(Viewer viewer, ChildId child, LocalDate from, LocalDate until);

    /** What of the program rests on a day because a rule of care forbids it, in the order of the program. */
    List<Resting> resting(Viewer viewer, ChildId child, LocalDate day);
}
