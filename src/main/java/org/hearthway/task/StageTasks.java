package org.hearthway.task;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * What the stages of a child's path ask of the family by themselves. Their days follow the plan, and with a stage its
 * tasks leave; only what was ticked is kept, among the other {@link Tasks}.
 */
public interface StageTasks {

    /**
     * One task of a stage.
     *
     * @param stage as {@code path/stage}, {@code path/stage/2} for the second time of one that repeats
     * @param place which of its tasks, from 0
     * @param says what is to be done
     * @param due the day by which; empty when it is to be done as long as the stage lasts
     * @param task as it was ticked, or as the team gave it in the same words; empty while nobody touched it
     */
    record Asked(String stage, int place, Bilingual says, Optional<LocalDate> due, Optional<Task> task) {

        /** Whether it is done. */
        public boolean isDone() {
            return task.flatMap(Task::end).isPresent();
        }
    }

    /**
     * What the stages ask that are behind the family, present or next, in the order of the path; of those that come
     * again only the next time. What the team found not needed or set aside is left out. Empty while nothing is asked of
     * the family, and in a real clinic while the words of the path were not accepted.
     */
    List<Asked> of(Viewer viewer, ChildId child);

    /**
     * The family has done it. The same tick twice is one tick; taken back it is as any other, see
     * {@link Tasks#takeBack}.
     *
     * @throws org.hearthway.base.Overtaken when the plan asks it no more
     */
    void tick(Viewer viewer, ChildId child, String stage, int place);
}
