package org.hearthway.reminder.engine;

import java.time.Duration;

/**
 * How long to wait before the next try: doubling from the first wait, never longer than the longest, each shortened by
 * up to a fifth so that many messages that failed together do not come back together.
 *
 * @param first the first wait
 * @param longest the longest wait
 */
public record BackOff(Duration first, Duration longest) {

    private static final int DOUBLINGS = 30;

    /**
     * The wait after so many failed tries.
     *
     * @param tries failed tries so far, 1 or more
     * @param seed what tells this message from others; the same seed and tries give the same wait
     * @throws IllegalArgumentException when nothing was tried yet
     */
    public Duration after(int tries, long seed) {
        if (tries < 1) {
            throw new IllegalArgumentException("nothing was tried yet");
        }
        var doubled = first.multipliedBy(1L << Math.min(tries - 1, DOUBLINGS));
        var whole = doubled.compareTo(longest) > 0 ? longest : doubled;
        var random = new java.util.SplittableRandom(seed * 31 + tries);
        return whole.minusMillis(random.nextLong(whole.toMillis() / 5 + 1));
    }
}
