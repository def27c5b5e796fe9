package org.hearthway.pump.engine;

import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/** Daily doses from one to another; both ends belong to it. */
public record DoseRange(DailyDose least, DailyDose most) {

    /** @throws Invalid when the first is the larger */
    public DoseRange {
        if (least.compareTo(most) > 0) {
            throw new Invalid(Problem.at("most", "pump.problem.range"));
        }
    }

    static DoseRange of(String least, String most) {
        return new DoseRange(DailyDose.microgramsPerDay(least), DailyDose.microgramsPerDay(most));
    }
}
