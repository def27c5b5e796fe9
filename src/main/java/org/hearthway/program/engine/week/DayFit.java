package org.hearthway.program.engine.week;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Items on one day, put into its times. Each item more makes another one of these, kept by the one before: the search
 * comes back to the same days again and again. What is cheapest for some items is never dearer than for those and more,
 * which makes {@link #moved} and {@link #changes} bounds for every day that grows out of this one.
 */
final class DayFit {

    private static final int UNKNOWN = -1;
    private static final int PHASES = Ask.Phase.values().length;

    private final Item[] all;
    private final int day;
    private final int[] room;
    private final int most;
    private final Effort effort;
    private final int[] here;
    private final int load;
    private final @Nullable DayFit[] next;
    private final boolean fits;

    private int[] places;
    private int moved = UNKNOWN;
    private int[] movedPlaces = {};
    private int changes = UNKNOWN;
    private int settled = UNKNOWN;
    private int[] settledPlaces = {};

    /**
     * A day without items.
     *
     * @param effort the steps of the whole search
     */
    DayFit(Item[] all, int day, int[] room, int most, Effort effort) {
        this(all, day, room, most, effort, new int[0], 0, new int[0]);
    }

    private DayFit(Item[] all, int day, int[] room, int most, Effort effort, int[] here, int load, int[] places) {
        this.all = all;
        this.day = day;
        this.room = room;
        this.most = most;
        this.effort = effort;
        this.here = here;
        this.load = load;
        this.next = new DayFit[all.length];
        this.places = places;
        this.fits = load <= most && (here.length == places.length || pack());
    }

    /** The day with one item more, of a higher number than those that are there. */
    DayFit with(int item) {
        var made = next[item];
        if (made == null) {
            var more = Arrays.copyOf(here, here.length + 1);
            more[here.length] = item;
            made = new DayFit(
                    all, day, room, most, effort, more, load + all[item].ask().minutes(), beside(item));
            next[item] = made;
        }
        return made;
    }

    /** Puts one more into a time that has room for it, if there is one. */
    private int[] beside(int item) {
        var one = all[item];
        for (int slot = 0; slot < room.length; slot++) {
            var used = 0;
            var taken = false;
            for (int i = 0; i < here.length; i++) {
                if (places[i] == slot) {
                    used += all[here[i]].ask().minutes();
                    taken |= all[here[i]].ask().equals(one.ask());
                }
            }
            if (!taken
                    && ((one.slots()[day] >> slot) & 1) == 1
                    && used + one.ask().minutes() <= room[slot]) {
                var more = Arrays.copyOf(places, places.length + 1);
                more[places.length] = slot;
                return more;
            }
        }
        return places;
    }

    /** Whether the items fit into the day's times. */
    boolean fits() {
        return fits;
    }

    /** Minutes of the items. */
    int load() {
        return load;
    }

    /** Fewest items in times that are new to them on a day they had. */
    int moved() {
        if (moved == UNKNOWN) {
            var search = new Search(Integer.MAX_VALUE, false, places);
            moved = search.run();
            movedPlaces = search.bestPlaces;
        }
        return moved;
    }

    /** Fewest changes of equipment. */
    int changes() {
        if (changes == UNKNOWN) {
            changes = new Search(Integer.MAX_VALUE, true, places).run();
        }
        return changes;
    }

    /** Fewest changes of equipment with the fewest items in new times. */
    int settled() {
        if (settled == UNKNOWN) {
            var search = new Search(moved(), true, movedPlaces);
            settled = search.run();
            settledPlaces = search.bestPlaces;
        }
        return settled;
    }

    /** The items, in the order of {@link #settledPlaces}. */
    int[] items() {
        return here.clone();
    }

    /** For each item its time, as {@link #settled} has it. */
    int[] settledPlaces() {
        settled();
        return settledPlaces.clone();
    }

    private boolean pack() {
        var search = new Search(Integer.MAX_VALUE, false, new int[0]);
        search.run();
        places = search.bestPlaces;
        return places.length == here.length;
    }

    private int movedTo(Item item, int slot) {
        return item.hadOn(day) && ((item.hadSlots()[day] >> slot) & 1) == 0 ? 1 : 0;
    }

    /**
     * How often something else is fetched, when in each phase the order is free.
     *
     * @param things for each phase the pieces of equipment, as bits
     */
    static int changes(long[] things) {
        var changes = 0;
        // what may lie there at the end without a change more; all else of the phase costs one more
        var ends = 0L;
        for (var phase : things) {
            if (phase == 0) {
                continue;
            }
            var count = Long.bitCount(phase);
            var joins = ends & phase;
            changes += ends != 0 && joins == 0 ? count : count - 1;
            ends = Long.bitCount(joins) == 1 && count > 1 ? phase & ~joins : phase;
        }
        return changes;
    }

    /** Tries all ways to put the items into times, the largest first, and keeps the cheapest. */
    private final class Search {

        private final int movedLimit;
        private final boolean byChanges;
        private final int[] order;
        private final int[] free = room.clone();
        private final long[][] things = new long[room.length][PHASES];
        private final int[] slotOf = new int[here.length];
        private final boolean any;
        private int best;
        private int[] bestPlaces;

        /**
         * A search.
         *
         * @param movedLimit so many items in new times at most
         * @param byChanges whether changes of equipment are made few, or else items in new times
         * @param start a way that is known; empty when any will do
         */
        private Search(int movedLimit, boolean byChanges, int[] start) {
            this.movedLimit = movedLimit;
            this.byChanges = byChanges;
            Arrays.fill(slotOf, UNKNOWN);
            this.any = start.length < here.length;
            this.best = any ? Integer.MAX_VALUE : cost(start);
            this.bestPlaces = start;
            this.order = IntStream.range(0, here.length)
                    .boxed()
                    .sorted(Comparator.comparingInt(i -> -all[here[i]].ask().minutes()))
                    .mapToInt(Integer::intValue)
                    .toArray();
        }

        private int run() {
            dive(0, 0);
            return best;
        }

        private boolean isOver() {
            return best == 0 || (any && best < Integer.MAX_VALUE);
        }

        private int cost(int[] start) {
            if (byChanges) {
                var there = new long[room.length][PHASES];
                for (int i = 0; i < start.length; i++) {
                    var item = all[here[i]];
                    if (item.equipment() >= 0) {
                        there[start[i]][item.ask().phase().rank()] |= 1L << item.equipment();
                    }
                }
                return changes(there);
            }
            var sum = 0;
            for (int i = 0; i < start.length; i++) {
                sum += movedTo(all[here[i]], start[i]);
            }
            return sum;
        }

        private void dive(int depth, int movedSoFar) {
            var isGoing = effort.take(1);
            var cost = byChanges ? changes(things) : movedSoFar;
            if (!isGoing || isOver() || cost >= best || movedSoFar > movedLimit) {
                return;
            }
            if (depth == order.length) {
                best = cost;
                bestPlaces = slotOf.clone();
                return;
            }
            var at = order[depth];
            var item = all[here[at]];
            for (int wanted = 0; wanted <= 1; wanted++) {
                for (int slot = 0; slot < free.length; slot++) {
                    if (movedTo(item, slot) == wanted && takes(item, at, slot)) {
                        put(item, at, slot, movedSoFar, depth);
                    }
                }
            }
        }

        private void put(Item item, int at, int slot, int movedSoFar, int depth) {
            var phase = item.ask().phase().rank();
            var before = things[slot][phase];
            if (item.equipment() >= 0) {
                things[slot][phase] |= 1L << item.equipment();
            }
            free[slot] -= item.ask().minutes();
            slotOf[at] = slot;
            dive(depth + 1, movedSoFar + movedTo(item, slot));
            slotOf[at] = UNKNOWN;
            free[slot] += item.ask().minutes();
            things[slot][phase] = before;
        }

        /** The times of one exercise on a day are alike, so they are tried in one order only. */
        private boolean takes(Item item, int at, int slot) {
            if (((item.slots()[day] >> slot) & 1) == 0
                    || free[slot] < item.ask().minutes()) {
                return false;
            }
            for (int other = 0; other < here.length; other++) {
                if (slotOf[other] != UNKNOWN
                        && all[here[other]].ask().equals(item.ask())
                        && (other < at ? slotOf[other] >= slot : slotOf[other] <= slot)) {
                    return false;
                }
            }
            return true;
        }

        private static int changes(long[][] things) {
            return Arrays.stream(things).mapToInt(DayFit::changes).sum();
        }
    }
}
