package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An amount with a unit, held as an exact fraction. Each kind is a type of its own, so a volume cannot be passed for a
 * dose. Rounding happens once, when it is shown: {@link #rounded}.
 */
public sealed interface Quantity extends Shown
        permits Amount,
                Concentration,
                DailyDose,
                DrugRate,
                Elapsed,
                FlowRate,
                Length,
                Mass,
                Volume,
                VolumeDifference,
                VolumePerLength {

    /** The amount in {@link #unit()}, not rounded. */
    BigFraction exact();

    /** The unit of {@link #exact()}. */
    Unit unit();

    /**
     * The amount for showing, half up, without zeros at its end.
     *
     * @param places places after the point, 0 or more
     */
    default BigDecimal rounded(int places) {
        return Exact.decimal(exact(), places);
    }

    /** The amount as a binary number, for a plot. */
    default double forPlot() {
        return exact().doubleValue();
    }
}
