package org.hearthway.caseload.engine;

/** Why a child can come onto the list, in the order in which equal dates are worked. */
public enum Rule {
    /** A family reported a sign, or wrote a note. */
    SIGN(true),
    /** A family logged severe pain. */
    PAIN(true),
    /** Visits that must not be missed were missed in a row. */
    MISSED(true),
    /** The refill-by date is near and no refill visit is booked by then. */
    REFILL(false),
    /** A dose waits for its second check. */
    SECOND_CHECK(false),
    /** A check of hips or spine is near or past and no visit is booked for it. */
    CHECK(false),
    /** Planned home days went by without a log. */
    NO_LOG(false),
    /** A task is past its day and still open. */
    TASK(false);

    private final boolean happening;

    Rule(boolean happening) {
        this.happening = happening;
    }

    /**
     * Whether the cause is something that happened once. Such a cause never goes away by itself: it leaves the list
     * only with an outcome, and then does not come back. Any other cause lasts while the facts last.
     */
    public boolean isHappening() {
        return happening;
    }
}
