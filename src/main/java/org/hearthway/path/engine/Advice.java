package org.hearthway.path.engine;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.hearthway.base.Bilingual;

/**
 * What a source says about the children a path is usually chosen for. It advises the team; it never blocks a choice.
 *
 * @param id identifier within the path
 * @param ages usual ages, if the advice is about age
 * @param levels usual GMFCS levels, 1 to 5; empty if the advice is about something else
 * @param says the fact, in staff words
 * @param source the published source, or "common practice, no source"
 */
public record Advice(String id, Optional<Ages> ages, SortedSet<Integer> levels, Bilingual says, String source) {

    /** Lowest GMFCS level. */
    public static final int LEAST_LEVEL = 1;

    /** Highest GMFCS level. */
    public static final int MOST_LEVEL = 5;

    public Advice {
        levels = Collections.unmodifiableSortedSet(new TreeSet<>(levels));
        if (ages.isPresent() && !levels.isEmpty()) {
            throw new IllegalArgumentException("one advice is about one thing");
        }
        if (!levels.isEmpty() && (levels.first() < LEAST_LEVEL || levels.last() > MOST_LEVEL)) {
            throw new IllegalArgumentException("GMFCS levels go from 1 to 5");
        }
    }

    /**
     * Ages in completed years: a child is as old as its last birthday says.
     *
     * @param from youngest usual age, 0 or more
     * @param to oldest usual age, up to the day before the next birthday; empty when no source gives one
     * @param stage the stage on whose first day the age counts
     */
    public record Ages(int from, Optional<Integer> to, String stage) {

        public Ages {
            if (from < 0 || to.filter(last -> last < from).isPresent()) {
                throw new IllegalArgumentException("ages go from the younger to the older");
            }
        }

        /** Whether an age in completed years is a usual one. */
        public boolean include(int years) {
            return years >= from && to.map(last -> years <= last).orElse(true);
        }
    }
}
