package org.hearthway.program.engine.week;

/** Steps that a search may still take. They are counted and not timed, so that the same question has the same answer everywhere. */
final class Effort {

    private long left;
    private boolean spent;

    /** So many steps from now on. */
    void begin(long steps) {
        left = steps;
        spent = false;
    }

    /** Takes steps; false when there are none left, from the first time on. */
    boolean take(int steps) {
        left -= steps;
        spent |= left < 0;
        return !spent;
    }

    /** Whether more steps were asked for than there were. */
    boolean isSpent() {
        return spent;
    }
}
