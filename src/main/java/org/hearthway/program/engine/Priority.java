package org.hearthway.program.engine;

/** How much an exercise matters, as the therapist says; the earlier one is never left out of a week for a later one. */
public enum Priority {
    FIRST(0),
    SECOND(1),
    THIRD(2);

    private final int rank;

    Priority(int rank) {
        this.rank = rank;
    }

    /** Its number, the most important is 0. */
    public int rank() {
        return rank;
    }
}
