package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How fast drug is given: a step of a schedule, or what a child receives. Other than a {@link DailyDose} it may be
 * nothing, and more than anybody would prescribe.
 *
 * @param exact micrograms per day, not negative
 */
public record DrugRate(BigFraction exact) implements Quantity, Comparable<DrugRate> {

    /** A step: more in an hour than the largest daily dose spread evenly is no rate but a bolus. */
    static final Bounds TYPED = Bounds.of("rate", "0", "100", 4, Unit.MICROGRAMS_PER_HOUR);

    /** @throws IllegalArgumentException when negative */
    public DrugRate {
        if (exact.signum() < 0) {
            throw new IllegalArgumentException("a rate below nothing");
        }
    }

    /**
     * The rate of a step that a person typed.
     *
     * @param microgramsPerHour 0 to 100, at most 4 places after the point
     * @throws org.hearthway.base.Invalid naming the bounds
     */
    public static DrugRate microgramsPerHour(BigDecimal microgramsPerHour) {
        return new DrugRate(TYPED.typed(microgramsPerHour).multiply(Exact.HOURS_A_DAY));
    }

    /** The same from a decimal in writing, such as {@code "7.5"}. */
    public static DrugRate microgramsPerHour(String microgramsPerHour) {
        return microgramsPerHour(new BigDecimal(microgramsPerHour));
    }

    /** In micrograms per hour. */
    public Amount perHour() {
        return new Amount(exact.divide(Exact.HOURS_A_DAY), Unit.MICROGRAMS_PER_HOUR);
    }

    /** What it gives in a time. */
    public Mass during(Elapsed time) {
        return new Mass(exact.multiply(time.days()));
    }

    /** The flow that carries it. */
    public FlowRate in(Concentration strength) {
        return FlowRate.perDay(exact.divide(strength.exact()));
    }

    @Override
    public Unit unit() {
        return Unit.MICROGRAMS_PER_DAY;
    }

    @Override
    public int compareTo(DrugRate other) {
        return exact.compareTo(other.exact);
    }
}
