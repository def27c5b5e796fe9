package org.hearthway.path.ui;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * Where a day lies on a line whose stones must not touch: each stone keeps a least gap to the one before it, and the
 * rest of the room is shared by time. Time therefore runs wider where stones crowd.
 */
final class TimeScale {

    private final List<LocalDate> stones;
    private final double[] at;

    /**
     * A line.
     *
     * @param stones their days, at least one, none before the one in front of it
     * @param left where the first lies
     * @param width how far the last lies from the first
     * @param gap least distance between two
     */
    TimeScale(List<LocalDate> stones, double left, double width, double gap) {
        this.stones = List.copyOf(stones);
        this.at = new double[stones.size()];
        var last = stones.size() - 1;
        var days = Math.max(1, ChronoUnit.DAYS.between(stones.get(0), stones.get(last)));
        var least = Math.min(gap, width / Math.max(1, last));
        var shared = width - least * last;
        at[0] = left;
        for (int i = 1; i <= last; i++) {
            at[i] = at[i - 1] + least + shared * ChronoUnit.DAYS.between(stones.get(i - 1), stones.get(i)) / days;
        }
    }

    /** Where a stone lies, by its place in the list. */
    double ofStone(int index) {
        return at[index];
    }

    /** Where a day lies; days beyond the ends lie at the ends. */
    double of(LocalDate day) {
        var last = stones.size() - 1;
        if (!day.isAfter(stones.get(0))) {
            return at[0];
        }
        for (int i = 1; i <= last; i++) {
            if (!day.isAfter(stones.get(i))) {
                var whole = ChronoUnit.DAYS.between(stones.get(i - 1), stones.get(i));
                var part = ChronoUnit.DAYS.between(stones.get(i - 1), day);
                return at[i - 1] + (at[i] - at[i - 1]) * part / whole;
            }
        }
        return at[last];
    }
}
