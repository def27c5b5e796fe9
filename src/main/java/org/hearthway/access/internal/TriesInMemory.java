package org.hearthway.access.internal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntFunction;

/** Counts failed tries by name, in memory, and no more names than a guesser can fill it with. */
class TriesInMemory {

    private static final int NAMES = 10_000;

    private record Count(int failures, Instant next) {}

    private final Map<String, Count> counts = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Count> eldest) {
            return size() > NAMES;
        }
    };
    private final IntFunction<Duration> wait;
    private final int most;
    private final Clock clock;

    /**
     * Makes a count.
     *
     * @param wait after so many failures
     * @param most failures after which no try is looked at any more
     */
    TriesInMemory(IntFunction<Duration> wait, int most, Clock clock) {
        this.wait = wait;
        this.most = most;
        this.clock = clock;
    }

    /** Counts a try before it is looked at; false when it must wait and is not to be looked at. */
    synchronized boolean begin(String name) {
        var count = Objects.requireNonNullElse(counts.get(name), new Count(0, Instant.MIN));
        if (count.failures() >= most || clock.instant().isBefore(count.next())) {
            return false;
        }
        var failures = count.failures() + 1;
        counts.put(name, new Count(failures, clock.instant().plus(wait.apply(failures))));
        return true;
    }

    /** The try was none of the failed ones: it counts no more, the others still do. */
    synchronized void succeeded(String name) {
        counts.computeIfPresent(name, (same, count) -> new Count(Math.max(0, count.failures() - 1), clock.instant()));
    }
}
