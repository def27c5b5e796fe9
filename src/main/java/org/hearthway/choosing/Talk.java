package org.hearthway.choosing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.choosing.engine.Line;
import org.hearthway.choosing.engine.Truth;

/**
 * What is on the table when a team and a family talk about a child's path. It adds nothing up and decides nothing.
 *
 * @param years the child's age in completed years
 * @param level GMFCS level, 1 to 5, if recorded
 * @param answers what was entered, by fact
 * @param paths always in the same order, whatever the facts are
 * @param version of the facts, counted up per child; 0 while none were entered
 */
public record Talk(int years, Optional<Integer> level, Map<String, Answer> answers, List<OnPath> paths, long version) {

    public Talk {
        answers = Map.copyOf(answers);
        paths = List.copyOf(paths);
    }

    /**
     * What is said about one path.
     *
     * @param guide what the clinic knows of it
     * @param lines for it, against it, missing, to talk about
     * @param change whether the usual change may be told of this child; not known while the facts for it are missing
     */
    public record OnPath(Guide guide, List<Line> lines, Truth change) {

        public OnPath {
            lines = List.copyOf(lines);
        }
    }
}
