package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much drug.
 *
 * @param exact micrograms, not negative
 */
public record Mass(BigFraction exact) implements Quantity, Comparable<Mass> {

    /** No drug. */
    public static final Mass NONE = new Mass(BigFraction.ZERO);

    /** A bolus or a test dose: 1 to 500; the test doses are 25 to 100 (US prescribing information). */
    static final Bounds TYPED = Bounds.of("dose", "1", "500", 3, Unit.MICROGRAMS);

    /** @throws IllegalArgumentException when negative */
    public Mass {
        if (exact.signum() < 0) {
            throw new IllegalArgumentException("a mass below nothing");
        }
    }

    /**
     * A single dose that a person typed.
     *
     * @param micrograms 1 to 500, at most 3 places after the point
     * @throws org.hearthway.base.Invalid naming the bounds
     */
    public static Mass micrograms(BigDecimal micrograms) {
        return new Mass(TYPED.typed(micrograms));
    }

    /** The same from a decimal in writing. */
    public static Mass micrograms(String micrograms) {
        return micrograms(new BigDecimal(micrograms));
    }

    /** Both together. */
    public Mass plus(Mass other) {
        return new Mass(exact.add(other.exact));
    }

    /** The volume that holds it. */
    public Volume in(Concentration strength) {
        return new Volume(exact.divide(strength.exact()));
    }

    /** How long a rate that is not nothing takes to give it. */
    public Elapsed at(DrugRate rate) {
        return Elapsed.hours(exact.multiply(Exact.HOURS_A_DAY).divide(rate.exact()));
    }

    @Override
    public Unit unit() {
        return Unit.MICROGRAMS;
    }

    @Override
    public int compareTo(Mass other) {
        return exact.compareTo(other.exact);
    }
}
