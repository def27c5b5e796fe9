package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hearthway.path.engine.network.Condition.Apart;
import org.hearthway.path.engine.network.Condition.Between;
import org.hearthway.path.engine.network.Condition.Gap;
import org.jspecify.annotations.Nullable;

/**
 * The earliest and the latest day of every point, narrowed from neighbour to neighbour until nothing changes. A change
 * reaches only what depends on it, and can be taken back.
 *
 * <p>Every rule between two points says that one lies at or past a day that only grows with the other. Of two schedules
 * that keep such rules, the earlier days of both keep them too, and so do the later ones: therefore all earliest days
 * together are a schedule, and all latest ones are another, whatever days are left out. Only pairs that must lie apart
 * have two ways round; for each of these one way has to be taken first.
 */
final class Bounds {

    /** Which of two points that lie apart comes first. */
    enum Turn {
        ONE,
        OTHER
    }

    private final Graph graph;
    private final LocalDate[] first;
    private final LocalDate[] last;
    private final int[] firstBy;
    private final int[] lastBy;
    private final Map<Integer, Turn> turns = new HashMap<>();
    private final List<Runnable> back = new ArrayList<>();
    private final Deque<Integer> changed = new ArrayDeque<>();
    private final BitSet waiting = new BitSet();

    /** Narrowed by nothing but the horizon. */
    static final int NOTHING = -1;

    private Bounds(Graph graph) {
        this.graph = graph;
        first = new LocalDate[graph.size()];
        last = new LocalDate[graph.size()];
        firstBy = new int[graph.size()];
        lastBy = new int[graph.size()];
    }

    /** All bounds; null when there are none. */
    static @Nullable Bounds of(Graph graph) {
        if (Loosened.isImpossible(graph)) {
            return null;
        }
        var bounds = new Bounds(graph);
        return bounds.begin() ? bounds : null;
    }

    private boolean begin() {
        for (int point = 0; point < graph.size(); point++) {
            first[point] = graph.onOrAfter(point, graph.horizon.first());
            last[point] = graph.onOrBefore(point, graph.horizon.last());
            firstBy[point] = NOTHING;
            lastBy[point] = NOTHING;
            wait(point);
        }
        for (int at = 0; at < graph.conditions.size(); at++) {
            if (graph.conditions.get(at) instanceof Between between) {
                int point = graph.number(between.point());
                if (!notBefore(point, between.first(), at) || !notAfter(point, between.last(), at)) {
                    return false;
                }
            }
        }
        return settle();
    }

    LocalDate first(int point) {
        return Objects.requireNonNull(first[point]);
    }

    LocalDate last(int point) {
        return Objects.requireNonNull(last[point]);
    }

    Span span(int point) {
        return new Span(first(point), last(point));
    }

    /** The condition that set the earliest day, or {@link #NOTHING}. */
    int firstBy(int point) {
        return firstBy[point];
    }

    /** The condition that set the latest day, or {@link #NOTHING}. */
    int lastBy(int point) {
        return lastBy[point];
    }

    /** Where to go back to. */
    int mark() {
        return back.size();
    }

    /** Takes back all that was narrowed since the mark. */
    void backTo(int mark) {
        while (back.size() > mark) {
            back.remove(back.size() - 1).run();
        }
        changed.clear();
        waiting.clear();
    }

    /** Puts a point on a day; false when no schedule has it there. */
    boolean put(int point, LocalDate day) {
        return notBefore(point, day, firstBy[point]) && notAfter(point, day, lastBy[point]) && settle();
    }

    /** Takes one way round for a pair that lies apart; false when no schedule has it so. */
    boolean turn(int at, Turn turn) {
        turns.put(at, turn);
        back.add(() -> turns.remove(at));
        return apart((Apart) graph.conditions.get(at), at) && settle();
    }

    /** A pair that must lie apart and can still do so both ways round; {@link #NOTHING} when there is none. */
    int open() {
        for (int at : graph.pairs) {
            if (!turns.containsKey(at) && isOpen((Apart) graph.conditions.get(at), at)) {
                return at;
            }
        }
        return NOTHING;
    }

    private boolean isOpen(Apart apart, int at) {
        int one = graph.one(at);
        int other = graph.other(at);
        return last(one).plusDays(apart.days()).isAfter(first(other))
                && last(other).plusDays(apart.days()).isAfter(first(one));
    }

    /**
     * Whether every pair lies apart on its earliest days, or every pair on its latest: then these are a schedule, and no
     * way round has to be tried.
     */
    boolean liesApartAtAnEnd() {
        return liesApart(first) || liesApart(last);
    }

    private boolean liesApart(LocalDate[] days) {
        for (int at : graph.pairs) {
            var apart = (Apart) graph.conditions.get(at);
            long between = days[graph.one(at)].toEpochDay() - days[graph.other(at)].toEpochDay();
            if (Math.abs(between) < apart.days()) {
                return false;
            }
        }
        return true;
    }

    private boolean settle() {
        while (!changed.isEmpty()) {
            int point = changed.remove();
            waiting.clear(point);
            for (int at : graph.touching.get(point)) {
                if (!narrow(at)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean narrow(int at) {
        var condition = graph.conditions.get(at);
        return condition instanceof Gap gap ? gap(gap, at) : apart((Apart) condition, at);
    }

    private boolean gap(Gap gap, int at) {
        int from = graph.one(at);
        int to = graph.other(at);
        if (gap.least().isPresent()) {
            var least = gap.least().get();
            if (!notBefore(to, first(from).plus(least), at)
                    || !notAfter(from, Gaps.lastLeadingTo(last(to), least), at)) {
                return false;
            }
        }
        if (gap.most().isPresent()) {
            var most = gap.most().get();
            return notAfter(to, last(from).plus(most), at) && notBefore(from, Gaps.firstLeadingTo(first(to), most), at);
        }
        return true;
    }

    private boolean apart(Apart apart, int at) {
        int one = graph.one(at);
        int other = graph.other(at);
        var turn = turns.get(at);
        boolean oneCanLead =
                turn != Turn.OTHER && !first(one).plusDays(apart.days()).isAfter(last(other));
        boolean otherCanLead =
                turn != Turn.ONE && !first(other).plusDays(apart.days()).isAfter(last(one));
        if (oneCanLead && otherCanLead) {
            return true;
        }
        if (!oneCanLead && !otherCanLead) {
            return false;
        }
        return oneCanLead ? leads(one, other, apart.days(), at) : leads(other, one, apart.days(), at);
    }

    private boolean leads(int one, int other, int days, int at) {
        return notBefore(other, first(one).plusDays(days), at)
                && notAfter(one, last(other).minusDays(days), at);
    }

    private boolean notBefore(int point, LocalDate day, int by) {
        if (!day.isAfter(first(point))) {
            return true;
        }
        var was = first(point);
        int wasBy = firstBy[point];
        back.add(() -> {
            first[point] = was;
            firstBy[point] = wasBy;
        });
        first[point] = graph.onOrAfter(point, day);
        firstBy[point] = by;
        wait(point);
        return !first(point).isAfter(last(point));
    }

    private boolean notAfter(int point, LocalDate day, int by) {
        if (!day.isBefore(last(point))) {
            return true;
        }
        var was = last(point);
        int wasBy = lastBy[point];
        back.add(() -> {
            last[point] = was;
            lastBy[point] = wasBy;
        });
        last[point] = graph.onOrBefore(point, day);
        lastBy[point] = by;
        wait(point);
        return !first(point).isAfter(last(point));
    }

    private void wait(int point) {
        if (!waiting.get(point)) {
            waiting.set(point);
            changed.add(point);
        }
    }
}
