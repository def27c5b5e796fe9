package org.hearthway.task;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;

/** What is to be done for the clinic's children, by the team and by the families. */
public interface Tasks {

    /** Most characters of what is to be done, in each language. */
    int LONGEST = 300;

    /** Fewest characters of a reason. */
    int REASON_MIN = 3;

    /** Most characters of a reason. */
    int REASON_MAX = 500;

    /** How far ahead a task may be wanted, in years. */
    int YEARS_AHEAD = 2;

    /** How far ahead it may be set aside, in years. */
    int YEARS_ASIDE = 1;

    /** How long a family can take its own tick back. */
    Duration UNDO = Duration.ofMinutes(15);

    /**
     * What is typed to give a task.
     *
     * @param to who is to do it
     * @param en in English, at most {@value #LONGEST} characters; needed when somebody who is asked reads English
     * @param es in Spanish, likewise; of a task for the team one language is enough
     * @param due not in the past, at most {@value #YEARS_AHEAD} years ahead
     * @param stage of the child's path as {@code path/stage}, if it belongs to one
     */
    record Asked(Assignee to, String en, String es, LocalDate due, Optional<String> stage) {}

    /**
     * Somebody whom a task can be given to.
     *
     * @param name of a person; empty for a role and for the whole family
     * @param reads the languages that the words must be in; empty for the team
     */
    record Choice(Assignee to, String name, Set<Language> reads) {
        public Choice {
            reads = Set.copyOf(reads);
        }
    }

    /**
     * A ready text: of the content, or of an open stage of the child's path. A proposal only; nothing is given by it.
     *
     * @param role of the team that it is usually for; empty for the family
     * @param stage the stage of the path, as {@code path/stage}; empty when it is of no stage
     * @param due a day that would fit
     */
    record Ready(String id, Optional<Role> role, Bilingual says, Optional<String> stage, LocalDate due) {}

    /** All tasks of a child, for the team: what is open by the day it is wanted, then what ended, newest first. */
    List<Task> of(Viewer viewer, ChildId child);

    /**
     * What this viewer's family is asked to do now, by day, and what it ticked so lately that the tick can be taken
     * back. A task for one caregiver is told to nobody else. Empty while nothing is asked of the family.
     */
    List<Task> forFamily(Viewer viewer, ChildId child);

    /** What waits for this person of the team, by name or by role, over all children of whom anything is asked. */
    List<Task> mine(Viewer.Person viewer);

    /** The children whose families have something to do; for the team and the machine. */
    Set<ChildId> withFamilyTasks(Viewer viewer);

    /** Whom a task about this child can be given to: the family first, then roles, then people. */
    List<Choice> choices(Viewer viewer, ChildId child);

    /** The ready texts that fit this child; in a real clinic only what an administrator accepted. */
    List<Ready> ready(Viewer viewer, ChildId child);

    /**
     * Gives a task.
     *
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     */
    TaskId give(Viewer viewer, ChildId child, Asked asked);

    /**
     * Says it anew: other words, another day, somebody else. What was set aside is back.
     *
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when it changed or ended since
     */
    void change(Viewer viewer, TaskId task, Asked asked, long seen);

    /**
     * Ends it in the name of the team.
     *
     * @param reason {@value #REASON_MIN} to {@value #REASON_MAX} characters when it is not needed; not asked for when done
     * @throws org.hearthway.base.Invalid at {@code reason}
     * @throws org.hearthway.base.Overtaken when it changed or ended since
     */
    void end(Viewer viewer, TaskId task, Task.Outcome outcome, String reason, long seen);

    /**
     * Sets it aside.
     *
     * @param until the day it comes back: after today, at most {@value #YEARS_ASIDE} year ahead
     * @param reason {@value #REASON_MIN} to {@value #REASON_MAX} characters
     * @throws org.hearthway.base.Invalid at {@code until} or {@code reason}
     * @throws org.hearthway.base.Overtaken when it changed or ended since
     */
    void setAside(Viewer viewer, TaskId task, LocalDate until, String reason, long seen);

    /** The family has done it. The same tick twice is one tick; a late one is kept whatever the child's status. */
    void tick(Viewer viewer, TaskId task, long seen);

    /**
     * Opens a task again: the team any that ended or was set aside; the family its own tick, for {@link #UNDO}.
     *
     * @throws org.hearthway.base.Overtaken when it changed since, is open, or the family's time is over
     */
    void takeBack(Viewer viewer, TaskId task, long seen);
}
