package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.program.engine.week.WeekPlan.Reason;
import org.hearthway.program.engine.week.WeekPlan.Way;

/**
 * Where the exercises of a program are in a week, as it was laid out once and then kept.
 *
 * @param kind how it was laid out
 * @param placed where the exercises are, within a time in the order in which they are done
 * @param asked all exercises it was laid out for, those without a place too; of others it says nothing
 * @param week the family's free times that it was laid out over
 * @param out what did not fit whole, the most important first
 */
public record Layout(Kind kind, List<Placed> placed, Set<String> asked, FamilyWeek week, List<Out> out) {

    public Layout {
        placed = List.copyOf(placed);
        asked = Set.copyOf(asked);
        out = List.copyOf(out);
    }

    /** How a week was laid out. */
    public enum Kind {
        /** The lines name their days and nothing stands against it: no plan is needed. */
        AS_WRITTEN,
        /** On days without times: the family has named none. */
        BY_DAY,
        /** In the family's times. */
        BY_TIME
    }

    /**
     * What did not fit whole.
     *
     * @param exercise identifier
     * @param sessions how many of its times found no place
     * @param reason why
     * @param ways what would make room for one of them; empty when only a look at the whole helps
     */
    public record Out(String exercise, int sessions, Reason reason, List<Way> ways) {
        public Out {
            ways = List.copyOf(ways);
        }

        static Out of(WeekPlan.Unfit unfit) {
            return new Out(unfit.ask().exercise(), unfit.sessions(), unfit.reason(), unfit.ways());
        }
    }

    /** As the lines say. */
    static Layout asWritten(List<Placed> placed, Set<String> asked) {
        return new Layout(Kind.AS_WRITTEN, placed, asked, new FamilyWeek(List.of(), java.util.Map.of()), List.of());
    }

    /** What is on a weekday, in its order. */
    public List<Placed> on(DayOfWeek day) {
        return placed.stream().filter(one -> one.day() == day).toList();
    }

    /** The time in which it is, where the week has times. */
    public Optional<FamilyWeek.Slot> slot(Placed one) {
        return kind == Kind.BY_TIME ? week.at(one.day(), one.start()) : Optional.empty();
    }
}
