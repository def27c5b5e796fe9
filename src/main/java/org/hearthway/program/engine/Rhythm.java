package org.hearthway.program.engine;

import java.time.DayOfWeek;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;

/**
 * On how many days of a week, and how these lie to each other. Weeks are taken to follow each other alike, so that
 * Sunday stands beside Monday.
 *
 * @param days 1 to 7; with {@link Spread#DAILY} 7
 * @param spread how they lie
 */
public record Rhythm(int days, Spread spread) {

    private static final int WEEK = 7;

    public Rhythm {
        if (days < 1 || days > WEEK) {
            throw new IllegalArgumentException("1 to 7 days");
        }
        if (spread == Spread.DAILY && days != WEEK) {
            throw new IllegalArgumentException("daily is seven days");
        }
    }

    /** How the days of a week lie to each other. */
    public enum Spread {
        /** Every day. */
        DAILY,
        /** Whichever days. */
        ANY,
        /** Every other day: two days on from the last one, but for one longer gap in the week. */
        ALTERNATE,
        /** Never on two days in a row; gaps of any length between. */
        NOT_FOLLOWING
    }

    /** Exactly these days, be it as it may how they lie; of none, as of one. */
    public static Rhythm on(Set<DayOfWeek> days) {
        return new Rhythm(Math.max(1, days.size()), Spread.ANY);
    }

    /** Whether two of the days follow each other; Monday follows Sunday. */
    public static boolean touch(Collection<DayOfWeek> days) {
        return days.stream().anyMatch(day -> days.contains(day.plus(1)));
    }

    /** Whether the days, which may be fewer than asked for, lie as they should. */
    public boolean allows(Set<DayOfWeek> chosen) {
        return chosen.size() <= days
                && switch (spread) {
                    case DAILY, ANY -> true;
                    case NOT_FOLLOWING -> !touch(chosen);
                    case ALTERNATE -> !touch(chosen) && alternate(chosen);
                };
    }

    private static boolean alternate(Set<DayOfWeek> chosen) {
        return chosen.stream().filter(day -> !chosen.contains(day.plus(2))).count() <= 1;
    }

    /** The most days, of those given, that can be chosen; at most the days asked for. */
    public int most(Set<DayOfWeek> possible) {
        var most = 0;
        for (int bits = 0; bits < 1 << WEEK; bits++) {
            var chosen = EnumSet.noneOf(DayOfWeek.class);
            for (var day : DayOfWeek.values()) {
                if (((bits >> (day.getValue() - 1)) & 1) == 1) {
                    chosen.add(day);
                }
            }
            if (chosen.size() > most && possible.containsAll(chosen) && allows(chosen)) {
                most = chosen.size();
            }
        }
        return most;
    }
}
