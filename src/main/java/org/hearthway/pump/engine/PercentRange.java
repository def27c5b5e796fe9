package org.hearthway.pump.engine;

import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/** Percentages from one to another; both ends belong to it. 1 to 100. */
public record PercentRange(int least, int most) {

    private static final int MOST = 100;

    /** @throws Invalid naming the bound that is broken */
    public PercentRange {
        Bounds.whole("least", least, 1, MOST, Unit.PERCENT);
        Bounds.whole("most", most, 1, MOST, Unit.PERCENT);
        if (least > most) {
            throw new Invalid(Problem.at("most", "pump.problem.range"));
        }
    }
}
