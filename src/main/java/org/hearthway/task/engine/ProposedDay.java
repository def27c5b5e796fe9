package org.hearthway.task.engine;

import java.time.LocalDate;

/** The day that is proposed for a task; a person chooses. */
public final class ProposedDay {

    /** A stage that ends later than this gives no day of its own (common practice, no source). */
    private static final int NEAR_DAYS = 56;

    /** What is proposed where a stage gives no day (common practice, no source). */
    private static final int USUAL_DAYS = 14;

    private ProposedDay() {}

    /**
     * The day for a task of a stage: the stage's last day when that is near, else two weeks from today.
     *
     * @param ends planned last day of the stage
     * @return never before today
     */
    public static LocalDate ofStage(LocalDate ends, LocalDate today) {
        return ends.isBefore(today) || ends.isAfter(today.plusDays(NEAR_DAYS)) ? today.plusDays(USUAL_DAYS) : ends;
    }
}
