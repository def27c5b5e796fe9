package org.hearthway.caseload.engine;

/** Why a cause stands no longer. */
public enum Gone {
    /** The family logged again. */
    LOGGED_AGAIN,
    /** The home program asks for these days no longer. */
    PLAN_CHANGED,
    /** What the family said since, or the clinic's own number, makes it no longer so. */
    RECORD_CHANGED,
    /** The line was changed, or its rule for more is no longer met. */
    MORE_SPENT,
    /** The program was saved since, or the rule of care has other days. */
    PROGRAM_SAVED,
    /** A visit is booked in time. */
    VISIT_BOOKED,
    /** A check was recorded, or the next one falls on another day. */
    CHECK_DATE_MOVED,
    /** A fill was recorded; the refill-by date is another. */
    REFILL_DATE_MOVED,
    /** What had to be looked into about the pump is explained, or no longer so. */
    PUMP_LOOKED_INTO,
    /** A fill of the pump was recorded. */
    FILL_RECORDED,
    /** The record of devices says something else now. */
    DEVICE_CHANGED,
    /** The path and the record of devices say the same of it. */
    DEVICE_AGREES,
    /** A reading of the stimulator was recorded or corrected, and the day is another. */
    READING_RECORDED,
    /** The newest reading of the stimulator says otherwise. */
    READ_ANEW,
    /** A second person typed the same, or something newer took its place. */
    TYPED_AGAIN,
    /** The refill-by date is no longer near. */
    NOT_NEAR,
    /** The path says something else of it now: it began or ended, has another day, or is on the plan no longer. */
    PATH_CHANGED,
    /** The task was done, is not needed, is set aside, or is for another day or another person. */
    TASK_WORKED
}
