package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * One of the daily times of an exercise, as the search sees it: days are bits from Monday, times of a day are bits in
 * their order. The second time of a day lies only on days that have a first.
 *
 * @param ask the exercise
 * @param copy 0 for the first time of a day, 1 for the second …
 * @param patterns the sets of days it may lie on, the fullest first, nothing last
 * @param slots for each day the times in which it can be done
 * @param had the days on which the exercise was last week
 * @param hadSlots for each day the times in which it was last week
 * @param equipment number of what is fetched, from 0; -1 for nothing
 * @param groups numbers of the muscle groups that rest on the day after
 */
@SuppressWarnings("ArrayRecordComponent") // made once, never handed on, never altered
record Item(Ask ask, int copy, int[] patterns, int[] slots, int had, int[] hadSlots, int equipment, int[] groups) {

    private static final int[] BUNCHED = IntStream.range(0, 1 << DayOfWeek.values().length)
            .map(pattern -> WeekCost.bunched(days(pattern)))
            .toArray();

    /** The same exercise once more on its days. */
    Item again(int copy) {
        return new Item(ask, copy, patterns(ask, copy, slots), slots, had, hadSlots, equipment, groups);
    }

    /** Minutes of the week that are missing with the pattern. */
    int missing(int pattern) {
        return (ask.rhythm().days() - Integer.bitCount(pattern)) * ask.minutes();
    }

    /** Days of last week that the pattern leaves; counted once for an exercise. */
    int left(int pattern) {
        return copy > 0 ? 0 : Integer.bitCount(had & ~pattern);
    }

    /** Days next to each other that need not be; counted once for an exercise. */
    int bunched(int pattern) {
        return copy > 0 ? 0 : BUNCHED[pattern];
    }

    /** Whether it was on that day last week. */
    boolean hadOn(int day) {
        return ((had >> day) & 1) == 1;
    }

    /** The number of a day, Monday is 0. */
    static int at(DayOfWeek day) {
        return day.getValue() - 1;
    }

    /** The days of the bits. */
    static Set<DayOfWeek> days(int pattern) {
        var days = EnumSet.noneOf(DayOfWeek.class);
        for (var day : DayOfWeek.values()) {
            if (((pattern >> at(day)) & 1) == 1) {
                days.add(day);
            }
        }
        return days;
    }

    /** All sets of days that the exercise allows among those on which it can be done, the fullest first. */
    static int[] patterns(Ask ask, int copy, int[] slots) {
        List<Integer> found = new ArrayList<>();
        for (int pattern = 0; pattern < 1 << slots.length; pattern++) {
            var possible = true;
            for (int day = 0; day < slots.length; day++) {
                possible &= ((pattern >> day) & 1) == 0 || Integer.bitCount(slots[day]) > copy;
            }
            // only the first time of a day decides on which days the exercise is
            if (possible
                    && (copy == 0
                            ? ask.allows(days(pattern))
                            : Integer.bitCount(pattern) <= ask.rhythm().days())) {
                found.add(pattern);
            }
        }
        found.sort(Comparator.<Integer>comparingInt(pattern -> -Integer.bitCount(pattern))
                .thenComparingInt(pattern -> pattern));
        return found.stream().mapToInt(Integer::intValue).toArray();
    }
}
