package org.hearthway.program.engine.week;

import java.util.Arrays;
import java.util.function.ToIntBiFunction;
import org.hearthway.program.engine.Priority;

/**
 * Branch and bound over the days of each item, aim by aim: each run makes one aim of {@link WeekCost} as small as it can
 * be while those before it stay at their best. A run ends at the bound that no week can pass, when everything was tried,
 * or after so many steps; steps are counted and not timed, so that the same question has the same answer everywhere.
 */
final class WeekSearch {

    private static final int DAYS = 7;
    private static final int PRIORITIES = Priority.values().length;
    private static final int LEFT = 2;
    private static final int MOVED = 3;
    private static final int THIRD = 4;
    private static final int LONGEST = 5;
    private static final int BUNCHED = 6;
    private static final int CHANGES = 7;
    private static final int ANY = 1 << 20;

    /** One step of this search takes as long as so many within a day. */
    private static final int STEP = 16;

    private final Item[] items;
    private final int[] capacity;
    private final int highest;
    private final int limit;
    private final Effort effort;

    private final DayFit[][] fits;
    private final int[][] groupDays;
    private final int[][] missing;
    private final int[] left;
    private final int[] bunched;
    private final int[] chosen;
    private final long[][][][] reach;
    private final int[][] wanted;
    private final int[][] possible;
    private final int[][] leastLeft;
    private final int[][] leastBunched;

    private DayFit[] best = {};
    private final int[] cost = new int[WeekCost.AIMS];
    private int aim;
    private int goal;
    private boolean found;

    /**
     * A search.
     *
     * @param items in the order in which they are placed, all of an earlier priority first
     * @param days the empty days, from Monday
     * @param capacity minutes that can be filled on each day
     * @param groups how many muscle groups there are
     * @param limit steps for each aim
     * @param effort counts the steps, of the searches within a day too
     */
    WeekSearch(Item[] items, DayFit[] days, int[] capacity, int groups, int limit, Effort effort) {
        this.items = items;
        this.capacity = capacity;
        this.highest = Arrays.stream(capacity).max().orElse(0);
        this.limit = limit;
        this.effort = effort;
        var deep = items.length + 1;
        fits = new DayFit[deep][];
        fits[0] = days;
        groupDays = new int[deep][groups];
        missing = new int[deep][PRIORITIES];
        left = new int[deep];
        bunched = new int[deep];
        chosen = new int[deep];
        reach = new long[deep][PRIORITIES][DAYS][];
        wanted = new int[deep][PRIORITIES];
        possible = new int[deep][PRIORITIES];
        leastLeft = least(Item::left);
        leastBunched = least(Item::bunched);
        lookAhead();
    }

    /** For each item, and for each number of its days that may be missing, the least that a pattern costs. */
    private int[][] least(ToIntBiFunction<Item, Integer> costs) {
        var least = new int[items.length][DAYS + 1];
        for (int i = 0; i < items.length; i++) {
            for (int spare = 0; spare <= DAYS; spare++) {
                var item = items[i];
                var enough = item.ask().rhythm().days() - spare;
                least[i][spare] = Arrays.stream(item.patterns())
                        .filter(pattern -> Integer.bitCount(pattern) >= enough)
                        .map(pattern -> costs.applyAsInt(item, pattern))
                        .min()
                        .orElse(0);
            }
        }
        return least;
    }

    /** What the items from each on could fill at most. */
    private void lookAhead() {
        var words = highest / Long.SIZE + 1;
        for (int priority = 0; priority < PRIORITIES; priority++) {
            for (int day = 0; day < DAYS; day++) {
                reach[items.length][priority][day] = new long[words];
                reach[items.length][priority][day][0] = 1;
            }
        }
        for (int i = items.length - 1; i >= 0; i--) {
            var ask = items[i].ask();
            var own = ask.priority().rank();
            wanted[i] = wanted[i + 1].clone();
            possible[i] = possible[i + 1].clone();
            wanted[i][own] += ask.rhythm().days() * ask.minutes();
            possible[i][own] += Integer.bitCount(items[i].patterns()[0]) * ask.minutes();
            for (int priority = 0; priority < PRIORITIES; priority++) {
                for (int day = 0; day < DAYS; day++) {
                    var after = reach[i + 1][priority][day];
                    reach[i][priority][day] =
                            priority == own && Integer.bitCount(items[i].slots()[day]) > items[i].copy()
                                    ? orShifted(after, ask.minutes())
                                    : after;
                }
            }
        }
    }

    private static long[] orShifted(long[] bits, int by) {
        var sum = bits.clone();
        var words = by / Long.SIZE;
        var rest = by % Long.SIZE;
        for (int i = sum.length - 1; i >= words; i--) {
            sum[i] |= bits[i - words] << rest;
            if (rest > 0 && i > words) {
                sum[i] |= bits[i - words - 1] >>> (Long.SIZE - rest);
            }
        }
        return sum;
    }

    /** The largest sum of minutes within the room, which is no less than nothing. */
    private static int largest(long[] bits, int room) {
        var top = Math.min(room, bits.length * Long.SIZE - 1);
        var word = top / Long.SIZE;
        var here = bits[word] & (-1L >>> (Long.SIZE - 1 - top % Long.SIZE));
        while (here == 0) {
            word--;
            here = bits[word];
        }
        return word * Long.SIZE + Long.SIZE - 1 - Long.numberOfLeadingZeros(here);
    }

    /** Finds the week; answers how many aims, from the first on, are proved to be at their best. */
    int run() {
        Arrays.fill(cost, Integer.MAX_VALUE);
        aim = -1;
        effort.begin(Long.MAX_VALUE);
        goal = 0;
        search();
        var proved = 0;
        var sure = true;
        for (int next = 0; next < WeekCost.AIMS; next++) {
            aim = next;
            // what rests on an aim that is not proved is worth less trouble
            effort.begin(sure ? limit : limit / 2);
            cost[next] = exact(best, next);
            goal = bound(0, next);
            if (cost[next] > goal) {
                search();
            }
            sure &= !effort.isSpent();
            proved += sure ? 1 : 0;
        }
        return proved;
    }

    /** The days that were found, from Monday. */
    DayFit[] days() {
        return best.clone();
    }

    private void search() {
        found = false;
        dive(0);
    }

    private boolean isOver() {
        return effort.isSpent() || (found && (aim < 0 || cost[aim] <= goal));
    }

    private void dive(int depth) {
        if (!effort.take(STEP) || isOver()) {
            return;
        }
        if (depth == items.length) {
            keep();
            return;
        }
        var open = open(depth);
        for (var option : options(depth, open)) {
            place(depth, items[depth].patterns()[(int) (option & 0xff)]);
            if (aim < 0 || isWorthwhile(depth + 1)) {
                dive(depth + 1);
            }
            if (isOver()) {
                return;
            }
        }
    }

    private void keep() {
        if (aim >= 0) {
            var here = exact(fits[items.length], aim);
            if (here >= cost[aim]) {
                return;
            }
            cost[aim] = here;
        }
        best = fits[items.length].clone();
        found = true;
    }

    /** The days on which the next item can lie beside those that are there. */
    private int open(int depth) {
        var item = items[depth];
        var open = 0;
        var resting = 0;
        for (var group : item.groups()) {
            var days = groupDays[depth][group];
            resting |= ((days << 1) | (days >> 6) | (days >> 1) | (days << 6)) & 0x7f;
        }
        for (int day = 0; day < DAYS; day++) {
            if (((resting >> day) & 1) == 0 && Integer.bitCount(item.slots()[day]) > item.copy()) {
                var fit = fits[depth][day].with(depth);
                open |= fit.fits() ? 1 << day : 0;
            }
        }
        return item.copy() > 0 ? open & chosen[depth - 1] : open;
    }

    /** The patterns to try, the most promising first; the number of the pattern stands in the last eight bits. */
    private long[] options(int depth, int open) {
        var item = items[depth];
        var options = new long[item.patterns().length];
        var count = 0;
        for (int i = 0; i < options.length; i++) {
            var pattern = item.patterns()[i];
            if ((pattern & ~open) == 0) {
                options[count++] = (promise(depth, item, pattern) << 8) | i;
            }
        }
        options = Arrays.copyOf(options, count);
        Arrays.sort(options);
        return options;
    }

    private long promise(int depth, Item item, int pattern) {
        var longest = 0;
        var sum = 0;
        for (int day = 0; day < DAYS; day++) {
            if (((pattern >> day) & 1) == 1) {
                longest = Math.max(longest, fits[depth][day].load() + item.ask().minutes());
                sum += fits[depth][day].load();
            }
        }
        long promise = (long) DAYS - Integer.bitCount(pattern);
        promise = (promise << 3) | item.left(pattern);
        promise = (promise << 11) | longest;
        promise = (promise << 3) | item.bunched(pattern);
        return (promise << 14) | sum;
    }

    private void place(int depth, int pattern) {
        var item = items[depth];
        var after = depth + 1;
        fits[after] = fits[depth].clone();
        for (int day = 0; day < DAYS; day++) {
            if (((pattern >> day) & 1) == 1) {
                fits[after][day] = fits[depth][day].with(depth);
            }
        }
        System.arraycopy(groupDays[depth], 0, groupDays[after], 0, groupDays[depth].length);
        for (var group : item.groups()) {
            groupDays[after][group] |= pattern;
        }
        System.arraycopy(missing[depth], 0, missing[after], 0, PRIORITIES);
        missing[after][item.ask().priority().rank()] += item.missing(pattern);
        left[after] = left[depth] + item.left(pattern);
        bunched[after] = bunched[depth] + item.bunched(pattern);
        chosen[depth] = pattern;
    }

    private boolean isWorthwhile(int depth) {
        for (int earlier = 0; earlier < aim; earlier++) {
            if (bound(depth, earlier) > cost[earlier]) {
                return false;
            }
        }
        return bound(depth, aim) < cost[aim];
    }

    /** No week that goes on from here has less of that aim. */
    private int bound(int depth, int which) {
        return switch (which) {
            case LEFT -> left[depth] + ahead(depth, true);
            case MOVED -> moved(fits[depth]);
            case LONGEST -> longest(depth);
            case BUNCHED -> bunched[depth] + ahead(depth, false);
            case CHANGES -> changes(fits[depth]);
            case THIRD -> missing(depth, Priority.THIRD.rank());
            default -> missing(depth, which);
        };
    }

    private int missing(int depth, int priority) {
        var room = 0;
        for (int day = 0; day < DAYS; day++) {
            room += largest(reach[depth][priority][day], capacity[day] - fits[depth][day].load());
        }
        return missing[depth][priority] + wanted[depth][priority] - Math.min(possible[depth][priority], room);
    }

    /** What the items to come add at least; where no day of theirs can be spared, only full patterns count. */
    private int ahead(int depth, boolean byLeft) {
        var sum = 0;
        for (int i = depth; i < items.length; i++) {
            var priority = items[i].ask().priority().rank();
            var spare = spare(depth, priority) / items[i].ask().minutes();
            var least = byLeft ? leastLeft[i] : leastBunched[i];
            sum += least[Math.min(spare, DAYS)];
        }
        return sum;
    }

    /** Minutes of the priority that may still stay out; without bound while its own aim is not reached. */
    private int spare(int depth, int priority) {
        var which = priority == Priority.THIRD.rank() ? THIRD : priority;
        return aim <= which ? ANY : Math.max(0, cost[which] - missing[depth][priority]);
    }

    /** The longest day when all that is still to come were poured over the week like water. */
    private int longest(int depth) {
        var level = 0;
        var total = 0;
        for (int day = 0; day < DAYS; day++) {
            level = Math.max(level, fits[depth][day].load());
            total += fits[depth][day].load();
        }
        for (int priority = 0; priority < PRIORITIES; priority++) {
            total += wanted[depth][priority] - spare(depth, priority);
        }
        while (level < highest && total > room(level)) {
            level++;
        }
        return WeekCost.steps(level);
    }

    private int room(int level) {
        var room = 0;
        for (var most : capacity) {
            room += Math.min(level, most);
        }
        return room;
    }

    private static int moved(DayFit[] days) {
        var sum = 0;
        for (var day : days) {
            sum += day.moved();
        }
        return sum;
    }

    private static int changes(DayFit[] days) {
        var sum = 0;
        for (var day : days) {
            sum += day.changes();
        }
        return sum;
    }

    private int exact(DayFit[] days, int which) {
        return switch (which) {
            case LEFT, BUNCHED -> {
                var sum = 0;
                for (int i = 0; i < items.length; i++) {
                    sum += which == LEFT ? items[i].left(pattern(days, i)) : items[i].bunched(pattern(days, i));
                }
                yield sum;
            }
            case MOVED -> moved(days);
            case LONGEST ->
                WeekCost.steps(Arrays.stream(days).mapToInt(DayFit::load).max().orElse(0));
            case CHANGES -> Arrays.stream(days).mapToInt(DayFit::settled).sum();
            case THIRD -> missing(days, Priority.THIRD.rank());
            default -> missing(days, which);
        };
    }

    private int missing(DayFit[] days, int priority) {
        var sum = 0;
        for (int i = 0; i < items.length; i++) {
            sum += items[i].ask().priority().rank() == priority ? items[i].missing(pattern(days, i)) : 0;
        }
        return sum;
    }

    private static int pattern(DayFit[] days, int item) {
        var pattern = 0;
        for (int day = 0; day < DAYS; day++) {
            pattern |= Arrays.stream(days[day].items()).anyMatch(one -> one == item) ? 1 << day : 0;
        }
        return pattern;
    }
}
