package org.hearthway.stimulator.engine;

/** Whether a generator is charged at home. */
public enum Charge {
    /** It is charged from outside; what its battery shows is how full it is, not how old. */
    AT_HOME,
    /** It is not charged, and ends when it is empty. */
    NEVER,
    /** Nobody said; taken as not charged, which looks earlier. */
    NOT_SAID
}
