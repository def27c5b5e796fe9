package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthway.program.engine.week.FamilyWeek.Slot;
import org.hearthway.program.engine.week.Layout.Kind;

/**
 * What stands on a day for the weeks around it: the family's times and what the program asks for.
 *
 * @param timed whether the family has named times that are free; else the days alone count
 * @param week the free times; with {@code timed} unset every day as a whole
 * @param demands what is asked for, no exercise twice
 */
public record Standing(boolean timed, FamilyWeek week, List<Demand> demands) {

    /** Hands that are there: one grown-up's, and those of two. */
    public static final String ONE = "+1";

    public static final String TWO = "+2";

    private static final int WHOLE_DAY = 24 * 60 - 1;

    /** A week without times of its own: each day takes what comes. */
    public static final FamilyWeek OPEN = new FamilyWeek(
            Arrays.stream(DayOfWeek.values())
                    .map(day -> new Slot(day, LocalTime.MIDNIGHT, WHOLE_DAY, Set.of(ONE, TWO)))
                    .toList(),
            Map.of());

    public Standing {
        demands = List.copyOf(demands);
    }

    /** Whether the lines alone say what is on which day. */
    boolean isWritten() {
        return demands.size() > WeekPlanner.MOST || (!timed && demands.stream().allMatch(Demand::isFixed));
    }

    Kind kind() {
        return timed ? Kind.BY_TIME : Kind.BY_DAY;
    }
}
