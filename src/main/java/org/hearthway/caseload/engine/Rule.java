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
    /** A pump is in and no fill of it is recorded, so that nobody knows by when to refill it. */
    FIRST_FILL(false),
    /** Print-out and forecast differ, the residual was not as expected, or a new pump is to be planned. */
    PUMP_CONCERN(false),
    /** A path says of a device what the record of devices does not say. */
    DEVICE_BEHIND(false),
    /** A stimulator showed what somebody should look at: a sudden fall, an impedance, a late charge, or it was off. */
    DEVICE_WARNING(false),
    /** A generator's battery is to be read, or a new one planned, and no visit is booked for it. */
    GENERATOR(false),
    /** A dose or a reading waits for its second check. */
    SECOND_CHECK(false),
    /** A check of hips or spine is near or past and no visit is booked for it. */
    CHECK(false),
    /** A stage is near, or should have begun, and what must end before it has not. */
    STAGE_WAITS(false),
    /** A stage of the plan gets no day by its rules. */
    STAGE_NO_DAY(false),
    /** The last day for a stage is past and nobody said that it began. */
    STAGE_LATE(false),
    /** A visit that a stage asks for is not booked and its window ends soon, or is over. */
    STAGE_VISIT(false),
    /** A row of pain ratings rises more than chance explains. */
    PAIN_RISING(false),
    /** Pain was felt on many of the last days. */
    PAIN_OFTEN(false),
    /** Exercises could not be because of pain, again and again. */
    STOPPED(false),
    /** The exercises felt too hard on many of the last days. */
    TOO_HARD(false),
    /** Planned home days went by without a log. */
    NO_LOG(false),
    /** Over weeks little of the home program was done. */
    FEW_DONE(false),
    /** A therapist's rule for more is met, and nobody has taken it up. */
    MORE(false),
    /** A rule of care began or ended, and exercises of the program are shut off or open again. */
    CARE_TURN(false),
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

    /** Whether it is about what a child's path asks for. Such a thing rests while nothing is asked of the family. */
    public boolean isOfPath() {
        return switch (this) {
            case STAGE_WAITS, STAGE_NO_DAY, STAGE_LATE, STAGE_VISIT -> true;
            case SIGN,
                    PAIN,
                    MISSED,
                    REFILL,
                    FIRST_FILL,
                    PUMP_CONCERN,
                    DEVICE_BEHIND,
                    DEVICE_WARNING,
                    GENERATOR,
                    SECOND_CHECK,
                    CHECK,
                    PAIN_RISING,
                    PAIN_OFTEN,
                    STOPPED,
                    TOO_HARD,
                    NO_LOG,
                    FEW_DONE,
                    MORE,
                    CARE_TURN,
                    TASK -> false;
        };
    }

    /** Whether it is read out of what a family says of the home program, day after day. */
    public boolean isOfHomeRecord() {
        return switch (this) {
            case PAIN_RISING, PAIN_OFTEN, STOPPED, TOO_HARD, NO_LOG, FEW_DONE -> true;
            case SIGN,
                    PAIN,
                    MISSED,
                    REFILL,
                    FIRST_FILL,
                    PUMP_CONCERN,
                    DEVICE_BEHIND,
                    DEVICE_WARNING,
                    GENERATOR,
                    SECOND_CHECK,
                    CHECK,
                    STAGE_WAITS,
                    STAGE_NO_DAY,
                    STAGE_LATE,
                    STAGE_VISIT,
                    MORE,
                    CARE_TURN,
                    TASK -> false;
        };
    }
}
