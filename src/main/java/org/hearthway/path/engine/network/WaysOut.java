package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import org.hearthway.path.engine.network.Condition.Apart;
import org.hearthway.path.engine.network.Condition.Between;
import org.hearthway.path.engine.network.Condition.Gap;
import org.hearthway.path.engine.network.Condition.On;
import org.hearthway.path.engine.network.WayOut.Give;
import org.hearthway.path.engine.network.WayOut.Move;
import org.hearthway.path.engine.network.WayOut.Side;

/**
 * Looks for single changes that make a schedule possible. They cost the days that a date moves, or else the days that a
 * rule gives way; a moved date comes before a rule that gives way, and of two alike the smaller first.
 */
public final class WaysOut {

    /** How far a date is moved or a rule bent at most: further is no longer the same plan. */
    private static final int MOST_DAYS = 366;

    private final Network network;
    private final Set<String> conflict;

    private WaysOut(Network network, Set<String> conflict) {
        this.network = network;
        this.conflict = conflict;
    }

    /**
     * Ways out, the cheapest first; empty when no single change within a year helps.
     *
     * @param network one without a schedule
     * @param conflict rules that cannot all hold
     * @param movable whether the dates of a rule may move; what has happened may not
     */
    public static List<WayOut> of(Network network, Set<String> conflict, Predicate<String> movable) {
        var ways = new WaysOut(network, conflict).all(movable);
        ways.sort(Comparator.comparing((WayOut way) -> way instanceof Give)
                .thenComparingLong(WayOut::days)
                .thenComparing(WayOut::rule));
        return List.copyOf(ways);
    }

    private List<WayOut> all(Predicate<String> movable) {
        var ways = new ArrayList<WayOut>();
        for (var condition : network.conditions()) {
            if (!conflict.contains(condition.rule())) {
                continue;
            }
            if (condition instanceof Between between) {
                if (movable.test(between.rule())) {
                    moved(between).ifPresent(ways::add);
                }
            } else if (!(condition instanceof On)) {
                given(condition).forEach(ways::add);
            }
        }
        return ways;
    }

    private Optional<WayOut> moved(Between between) {
        var free = network.without(between.rule());
        var span = free.bounds().map(bounds -> Objects.requireNonNull(bounds.get(between.point())));
        if (span.isEmpty()) {
            return Optional.empty();
        }
        for (int distance = 1; distance <= MOST_DAYS; distance++) {
            for (var day :
                    List.of(between.first().plusDays(distance), between.first().minusDays(distance))) {
                if (isWithin(span.get(), day)
                        && free.with(Between.on(between.rule(), between.point(), day))
                                .isPossible()) {
                    return Optional.of(new Move(between.rule(), between.point(), between.first(), day));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isWithin(Span span, LocalDate day) {
        return !day.isBefore(span.first()) && !day.isAfter(span.last());
    }

    private List<WayOut> given(Condition condition) {
        var ways = new ArrayList<WayOut>();
        if (condition instanceof Apart apart) {
            least(days -> instead(apart, days < apart.days() ? Optional.of(nearer(apart, days)) : Optional.empty()))
                    .filter(days -> days < apart.days())
                    .ifPresent(days -> ways.add(new Give(apart.rule(), Side.SHORTER, days)));
        } else if (condition instanceof Gap gap) {
            gap.most()
                    .flatMap(most -> least(days -> instead(
                            gap,
                            Optional.of(new Gap(
                                    gap.rule(), gap.from(), gap.to(), gap.least(), Optional.of(most.plusDays(days)))))))
                    .ifPresent(days -> ways.add(new Give(gap.rule(), Side.LONGER, days)));
            gap.least()
                    .flatMap(least -> least(days -> instead(
                            gap,
                            Optional.of(new Gap(
                                    gap.rule(),
                                    gap.from(),
                                    gap.to(),
                                    Optional.of(least.minusDays(days)),
                                    gap.most())))))
                    .ifPresent(days -> ways.add(new Give(gap.rule(), Side.SHORTER, days)));
        }
        return ways;
    }

    private static Apart nearer(Apart apart, long days) {
        return new Apart(apart.rule(), apart.one(), apart.other(), (int) (apart.days() - days));
    }

    private Network instead(Condition condition, Optional<Condition> other) {
        return network.replacing(condition, other);
    }

    /** The fewest days by which a rule has to give way; what works with some works with more. */
    private static Optional<Long> least(LongFunction<Network> bent) {
        if (!bent.apply(MOST_DAYS).isPossible()) {
            return Optional.empty();
        }
        long tooFew = 0;
        long enough = MOST_DAYS;
        while (enough - tooFew > 1) {
            long middle = (tooFew + enough) / 2;
            if (bent.apply(middle).isPossible()) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return Optional.of(enough);
    }
}
