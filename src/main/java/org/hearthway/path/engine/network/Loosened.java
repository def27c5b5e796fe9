package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.time.Period;
import java.util.Arrays;
import org.hearthway.path.engine.network.Condition.Between;
import org.hearthway.path.engine.network.Condition.Gap;

/**
 * A quick look for rules that contradict each other: all gaps in days, a little wider than they are, every day allowed.
 * What is impossible even so is impossible, and shows within as many rounds as there are points; narrowing dates would
 * creep towards the end of the horizon instead.
 */
final class Loosened {

    /** Mean length of a month of the Gregorian calendar, in days. */
    private static final double MONTH = 30.436875;

    /** No number of months differs from its mean length by more. */
    private static final int UNEVEN_DAYS = 3;

    private final Graph graph;
    private final long[] first;
    private final long[] last;

    private Loosened(Graph graph) {
        this.graph = graph;
        first = new long[graph.size()];
        last = new long[graph.size()];
        Arrays.fill(first, graph.horizon.first().toEpochDay());
        Arrays.fill(last, graph.horizon.last().toEpochDay());
    }

    /** Whether no schedule exists even when everything is a little looser. */
    static boolean isImpossible(Graph graph) {
        return new Loosened(graph).isImpossible();
    }

    private boolean isImpossible() {
        for (int round = 0; round <= graph.size(); round++) {
            boolean changed = false;
            for (int at = 0; at < graph.conditions.size(); at++) {
                var condition = graph.conditions.get(at);
                if (condition instanceof Gap gap) {
                    changed |= narrow(gap, graph.one(at), graph.other(at));
                } else if (condition instanceof Between between) {
                    changed |= narrow(between);
                }
            }
            if (!changed) {
                return false;
            }
            for (int point = 0; point < first.length; point++) {
                if (first[point] > last[point]) {
                    return true;
                }
            }
        }
        // more rounds than points: the rules push each other on without end
        return true;
    }

    private boolean narrow(Between between) {
        int point = graph.number(between.point());
        boolean changed = notBefore(point, day(between.first()));
        return notAfter(point, day(between.last())) || changed;
    }

    private static long day(LocalDate date) {
        return date.toEpochDay();
    }

    private boolean narrow(Gap gap, int from, int to) {
        boolean changed = false;
        if (gap.least().isPresent()) {
            long least = shortest(gap.least().get());
            changed = notBefore(to, first[from] + least);
            changed = notAfter(from, last[to] - least) || changed;
        }
        if (gap.most().isPresent()) {
            long most = longest(gap.most().get());
            changed = notAfter(to, last[from] + most) || changed;
            changed = notBefore(from, first[to] - most) || changed;
        }
        return changed;
    }

    private boolean notBefore(int point, long day) {
        boolean later = day > first[point];
        if (later) {
            first[point] = day;
        }
        return later;
    }

    private boolean notAfter(int point, long day) {
        boolean earlier = day < last[point];
        if (earlier) {
            last[point] = day;
        }
        return earlier;
    }

    /** Days that the period has at least, from whatever day. */
    @SuppressWarnings("JavaPeriodGetDays") // its months are counted beside
    static long shortest(Period period) {
        long months = period.toTotalMonths();
        return (months == 0 ? 0 : (long) Math.floor(months * MONTH) - UNEVEN_DAYS) + period.getDays();
    }

    /** Days that the period has at most, from whatever day. */
    @SuppressWarnings("JavaPeriodGetDays") // its months are counted beside
    static long longest(Period period) {
        long months = period.toTotalMonths();
        return (months == 0 ? 0 : (long) Math.ceil(months * MONTH) + UNEVEN_DAYS) + period.getDays();
    }
}
