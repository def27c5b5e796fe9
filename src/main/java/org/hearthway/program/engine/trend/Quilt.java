package org.hearthway.program.engine.trend;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A quilt that grows by a patch for each week in which anything was practised. A week without practice leaves no gap,
 * and how much was done does not show: there is nothing to lose and nothing to compare.
 */
public final class Quilt {

    private Quilt() {}

    /**
     * A patch.
     *
     * @param number counts from 1 in the order of the weeks
     * @param week the Monday of its week
     * @param kinds the kinds of exercises that were practised, in the clinic's keys
     */
    public record Patch(int number, LocalDate week, Set<String> kinds) {
        public Patch {
            kinds = Set.copyOf(kinds);
        }
    }

    /** A practised exercise: its kind and its day; one done in part counts as much as one done whole. */
    public record Practised(String kind, LocalDate day) {}

    /** Sews it; the order in which the days are given does not matter. */
    public static List<Patch> of(Collection<Practised> practised) {
        var weeks = new TreeMap<LocalDate, Set<String>>();
        for (var one : practised) {
            weeks.computeIfAbsent(
                            one.day().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)), week -> new TreeSet<>())
                    .add(one.kind());
        }
        var patches = new ArrayList<Patch>();
        weeks.forEach((week, kinds) -> patches.add(new Patch(patches.size() + 1, week, kinds)));
        return List.copyOf(patches);
    }
}
