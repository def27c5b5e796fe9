package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.path.engine.Amount.Gap;
import org.hearthway.path.engine.Amount.Times;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.ValuePlace.Kind;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;

/** What the values of a path keep to, whether they stand in its file or are a clinic's own. */
public final class ValueRules {

    /** So often at most does something come again. */
    public static final int MOST_TIMES = 60;

    /** So many days at most are two stages kept apart. */
    public static final int MOST_DAYS_APART = 400;

    private static final int LEAST_TIMES = 2;
    private static final Period NONE = Period.ZERO;
    private static final Period A_DAY = Period.ofDays(1);
    private static final Period A_YEAR_BEFORE = Period.ofYears(-1);
    private static final Period LONGEST = Period.ofYears(20);
    private static final LocalDate SOME_DAY = LocalDate.of(2026, 1, 5);
    private static final Calendar EVERY_DAY =
            Calendar.of(Days.ALL, new Span(SOME_DAY.minusYears(2), SOME_DAY.plusYears(60)));

    private ValueRules() {}

    /** Everything wrong with a path's values; whether its stages get days only when nothing else is wrong. */
    public static List<ValueFlaw> flaws(Template path) {
        var values = PathValues.of(path);
        var flaws = new ArrayList<ValueFlaw>();
        values.forEach((at, says) -> bounds(at, says).ifPresent(flaws::add));
        if (flaws.isEmpty()) {
            values.keySet().forEach(at -> order(at, values).ifPresent(flaws::add));
        }
        if (flaws.isEmpty()) {
            clashes(path).forEach(clash -> flaws.add(new ValueFlaw.NoDay(clash)));
        }
        return flaws;
    }

    /**
     * The stages that would get no day, even if the clinic were open every day. They are looked for with and without
     * the stages that are not always there: rules without slack between them show here.
     *
     * @param path one whose gaps are in order
     */
    public static List<Clash> clashes(Template path) {
        var optional = path.stages().stream()
                .filter(stage -> stage.timing().optional())
                .map(Stage::id)
                .collect(Collectors.toSet());
        return Stream.of(Set.<String>of(), optional)
                .map(added -> Course.begun(SOME_DAY).withStages(added, Set.of()))
                .flatMap(course -> Planner.plan(path, course, EVERY_DAY, SOME_DAY).clashes().stream())
                .distinct()
                .toList();
    }

    /** Whether a gap never passes another, from whatever day both are counted; months differ in length. */
    public static boolean isAtMost(Period gap, Period other) {
        if (gap.toTotalMonths() == other.toTotalMonths()) {
            return !LocalDate.EPOCH.plus(gap).isAfter(LocalDate.EPOCH.plus(other));
        }
        return new After(Optional.empty(), Edge.START, gap, Optional.of(other), Optional.empty()).isOrdered();
    }

    /** Whether a rule of care that holds until a gap has passed holds at all. */
    public static boolean isLonger(Period until, Period from) {
        return LocalDate.EPOCH.plus(until).isAfter(LocalDate.EPOCH.plus(from));
    }

    /** Whether a task can be due a gap after its stage's first day: at most a year before it and 20 years after it. */
    public static boolean isDue(Period gap) {
        return isAtMost(A_YEAR_BEFORE, gap) && isAtMost(gap, LONGEST);
    }

    private static Optional<ValueFlaw> bounds(ValuePlace at, Amount says) {
        if (says instanceof Times times) {
            return times.number() >= LEAST_TIMES && times.number() <= MOST_TIMES
                    ? Optional.empty()
                    : Optional.of(new ValueFlaw.OutOfBounds(at, new Times(LEAST_TIMES), new Times(MOST_TIMES)));
        }
        var gap = ((Gap) says).period();
        var least = least(at.kind());
        var most = at.kind() == Kind.APART_DAYS ? Period.ofDays(MOST_DAYS_APART) : LONGEST;
        var wholeDays = at.kind() != Kind.APART_DAYS || gap.toTotalMonths() == 0;
        return wholeDays && isAtMost(least, gap) && isAtMost(gap, most)
                ? Optional.empty()
                : Optional.of(new ValueFlaw.OutOfBounds(at, new Gap(least), new Gap(most)));
    }

    private static Period least(Kind kind) {
        return switch (kind) {
            case VISIT_AFTER, FAMILY_TASK_DUE, STAFF_TASK_DUE -> A_YEAR_BEFORE;
            case REPEATS_EVERY, VISIT_EVERY, APART_DAYS -> A_DAY;
            case BEGINS_EARLIEST,
                    BEGINS_USUAL,
                    BEGINS_LATEST,
                    LASTS_LEAST,
                    LASTS_USUAL,
                    LASTS_MOST,
                    REPEATS_TIMES,
                    PRECAUTION_FROM,
                    PRECAUTION_UNTIL,
                    VISIT_WITHIN,
                    VISIT_TIMES -> NONE;
        };
    }

    /** The next longer value of its rule that stands there, and whether this one passes it. */
    private static Optional<ValueFlaw> order(ValuePlace at, Map<ValuePlace, Amount> values) {
        return longer(at.kind()).stream()
                .map(at::beside)
                .filter(values::containsKey)
                .findFirst()
                .filter(longer -> !inOrder(at, gap(values, at), gap(values, longer)))
                .map(longer -> new ValueFlaw.OutOfOrder(at, longer));
    }

    private static boolean inOrder(ValuePlace at, Period shorter, Period longer) {
        return at.kind() == Kind.PRECAUTION_FROM ? isLonger(longer, shorter) : isAtMost(shorter, longer);
    }

    private static List<Kind> longer(Kind kind) {
        return switch (kind) {
            case BEGINS_EARLIEST -> List.of(Kind.BEGINS_USUAL, Kind.BEGINS_LATEST);
            case BEGINS_USUAL -> List.of(Kind.BEGINS_LATEST);
            case LASTS_LEAST -> List.of(Kind.LASTS_USUAL);
            case LASTS_USUAL -> List.of(Kind.LASTS_MOST);
            case PRECAUTION_FROM -> List.of(Kind.PRECAUTION_UNTIL);
            case BEGINS_LATEST,
                    LASTS_MOST,
                    REPEATS_EVERY,
                    REPEATS_TIMES,
                    APART_DAYS,
                    PRECAUTION_UNTIL,
                    VISIT_AFTER,
                    VISIT_WITHIN,
                    VISIT_EVERY,
                    VISIT_TIMES,
                    FAMILY_TASK_DUE,
                    STAFF_TASK_DUE -> List.of();
        };
    }

    private static Period gap(Map<ValuePlace, Amount> values, ValuePlace at) {
        return ((Gap) java.util.Objects.requireNonNull(values.get(at))).period();
    }
}
