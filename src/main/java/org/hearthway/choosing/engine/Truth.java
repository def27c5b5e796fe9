package org.hearthway.choosing.engine;

/**
 * Yes, no, or not known. The connectives are Kleene's strong ones: what is not known decides nothing, and what is known
 * may decide without it (Kleene SC, Introduction to Metamathematics, 1952, section 64).
 */
public enum Truth {
    NO,
    UNKNOWN,
    YES;

    /** Yes or no. */
    public static Truth of(boolean yes) {
        return yes ? YES : NO;
    }

    /** No when one of both is no, yes when both are yes. */
    public Truth and(Truth other) {
        return compareTo(other) < 0 ? this : other;
    }

    /** Yes when one of both is yes, no when both are no. */
    public Truth or(Truth other) {
        return compareTo(other) > 0 ? this : other;
    }

    /** The opposite; of what is not known, the opposite is not known either. */
    public Truth not() {
        return switch (this) {
            case NO -> YES;
            case UNKNOWN -> UNKNOWN;
            case YES -> NO;
        };
    }
}
