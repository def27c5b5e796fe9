package org.hearthway.child;

/** Where a child stands with the clinic. Whatever is not {@code ACTIVE} stops what is asked of the family at once. */
public enum Status {
    /** Cared for here. */
    ACTIVE(true, true),
    /** In hospital or away for a time: the home program pauses, nothing is moved. */
    AWAY(false, true),
    /** With another clinic now. */
    MOVED(false, false),
    /** Grown up and with adult care now. */
    ADULT_CARE(false, false),
    /** The family ended the care. */
    LEFT(false, false),
    DIED(false, false);

    private final boolean asks;
    private final boolean watched;

    Status(boolean asks, boolean watched) {
        this.asks = asks;
        this.watched = watched;
    }

    /** Whether anything may be asked of the family: messages, exercises, answers. */
    public boolean asksTheFamily() {
        return asks;
    }

    /**
     * Whether the team still watches what guards life: a refill date, a reported sign. A child in hospital has a pump
     * that runs down all the same.
     */
    public boolean isWatched() {
        return watched;
    }

    /** Whether somebody else must have taken over. */
    public boolean needsReceivingService() {
        return this == MOVED || this == ADULT_CARE;
    }
}
