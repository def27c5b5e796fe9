package org.hearthway.reminder.engine;

/** How a reminder reaches the family. */
public enum Way {
    /** By mail. */
    SEND,
    /** A person of the clinic calls. */
    CALL
}
