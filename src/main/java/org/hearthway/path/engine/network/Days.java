package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.util.BitSet;
import java.util.function.Predicate;

/** The days on which something may lie: known from a first to a last day, and every day outside of these. */
public final class Days {

    /** No day is left out. */
    public static final Days ALL = new Days(LocalDate.EPOCH, new BitSet());

    private final LocalDate first;
    private final BitSet closed;

    private Days(LocalDate first, BitSet closed) {
        this.first = first;
        this.closed = closed;
    }

    /**
     * Asks once for every day between two.
     *
     * @param first first day asked for
     * @param last last day asked for; later days are allowed
     * @param allowed whether a day is allowed
     */
    public static Days where(LocalDate first, LocalDate last, Predicate<LocalDate> allowed) {
        var closed = new BitSet();
        int at = 0;
        for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
            if (!allowed.test(day)) {
                closed.set(at);
            }
            at++;
        }
        return new Days(first, closed);
    }

    /** Whether the day is allowed. */
    public boolean allow(LocalDate day) {
        int at = at(day);
        return at < 0 || !closed.get(at);
    }

    /** The day itself if it is allowed, else the next allowed one. */
    LocalDate onOrAfter(LocalDate day) {
        int at = at(day);
        return at < 0 || !closed.get(at) ? day : first.plusDays(closed.nextClearBit(at));
    }

    /** The day itself if it is allowed, else the last allowed one before. */
    LocalDate onOrBefore(LocalDate day) {
        int at = at(day);
        return at < 0 || !closed.get(at) ? day : first.plusDays(closed.previousClearBit(at));
    }

    /** Days since the first one known; negative where every day is allowed. */
    private int at(LocalDate day) {
        return (int) Math.max(-1, Math.min(day.toEpochDay() - first.toEpochDay(), Integer.MAX_VALUE - 1));
    }
}
