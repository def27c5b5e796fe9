package org.hearthway.reminder;

import java.time.Instant;

/**
 * Since when the program writes to families, where that is not always: what the demo clinic lives through before its
 * first request was never told to anybody.
 */
@FunctionalInterface
public interface Beginning {

    /** The moment. */
    Instant at();
}
