package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How fast fluid leaves a reservoir.
 *
 * @param exact mL per hour, not negative
 */
public record FlowRate(BigFraction exact) implements Quantity, Comparable<FlowRate> {

    /** What pumps of any kind do. Common practice, no source. */
    static final Bounds TYPED = Bounds.of("flow", "0", "2", 6, Unit.MILLILITRES_PER_HOUR);

    /** @throws IllegalArgumentException when negative */
    public FlowRate {
        if (exact.signum() < 0) {
            throw new IllegalArgumentException("a flow below nothing");
        }
    }

    /**
     * A flow that a person typed.
     *
     * @param millilitresPerHour 0 to 2, at most 6 places after the point
     * @throws org.hearthway.base.Invalid naming the bounds
     */
    public static FlowRate millilitresPerHour(BigDecimal millilitresPerHour) {
        return new FlowRate(TYPED.typed(millilitresPerHour));
    }

    /** The same from a decimal in writing. */
    public static FlowRate millilitresPerHour(String millilitresPerHour) {
        return millilitresPerHour(new BigDecimal(millilitresPerHour));
    }

    /**
     * A flow told for the day, as makers of pumps do.
     *
     * @param millilitresPerDay 0 to 48, at most 6 places after the point
     * @throws org.hearthway.base.Invalid naming the bounds
     */
    public static FlowRate millilitresPerDay(String millilitresPerDay) {
        return perDay(
                Bounds.of("flow", "0", "48", 6, Unit.MILLILITRES_PER_DAY).typed(new BigDecimal(millilitresPerDay)));
    }

    static FlowRate perDay(BigFraction millilitres) {
        return new FlowRate(millilitres.divide(Exact.HOURS_A_DAY));
    }

    /** In mL per day. */
    public Amount perDay() {
        return new Amount(exact.multiply(Exact.HOURS_A_DAY), Unit.MILLILITRES_PER_DAY);
    }

    /** What flows in a time. */
    public Volume during(Elapsed time) {
        return new Volume(exact.multiply(time.exact()));
    }

    /** The drug it carries. */
    public DrugRate at(Concentration strength) {
        return new DrugRate(exact.multiply(strength.exact()).multiply(Exact.HOURS_A_DAY));
    }

    @Override
    public Unit unit() {
        return Unit.MILLILITRES_PER_HOUR;
    }

    @Override
    public int compareTo(FlowRate other) {
        return exact.compareTo(other.exact);
    }
}
