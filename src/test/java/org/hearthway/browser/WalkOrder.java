package org.hearthway.browser;

/**
 * The order of the walks. Two go side by side: one takes them from the front, the other from the back. Those that take
 * turns in one clinic stand in front, so that neither waits for the other, and the longest ones are begun first.
 */
public final class WalkOrder {

    /** The longest of those that take turns. */
    public static final int LONGEST_SHARED = 1;

    /** Takes turns with others in one clinic. */
    public static final int SHARED = 2;

    /** Long, in a clinic of its own. */
    public static final int LONG = Integer.MAX_VALUE - 1;

    /** Keeps the log, while no other clinic can start or end: begun when the others are busy in the shared one. */
    public static final int KEEPS_THE_LOG = Integer.MAX_VALUE;

    private WalkOrder() {}
}
