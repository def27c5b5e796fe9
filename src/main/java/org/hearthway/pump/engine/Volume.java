package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much fluid. Two are equal when they are the same amount, however many zeros were typed.
 *
 * @param exact mL, not negative
 */
public record Volume(BigFraction exact) implements Quantity, Comparable<Volume> {

    /** No fluid. */
    public static final Volume NONE = new Volume(BigFraction.ZERO);

    static final Bounds TYPED = Bounds.of("volume", "0", "100", 4, Unit.MILLILITRES);

    /** @throws IllegalArgumentException when negative */
    public Volume {
        if (exact.signum() < 0) {
            throw new IllegalArgumentException("a volume below nothing");
        }
    }

    /**
     * A volume that a person typed.
     *
     * @param millilitres 0 to 100, at most 4 places after the point
     * @throws org.hearthway.base.Invalid naming the bounds
     */
    public static Volume millilitres(BigDecimal millilitres) {
        return new Volume(TYPED.typed(millilitres));
    }

    /** The same from a decimal in writing, such as {@code "18.7"}. */
    public static Volume millilitres(String millilitres) {
        return millilitres(new BigDecimal(millilitres));
    }

    /** Both together. */
    public Volume plus(Volume other) {
        return new Volume(exact.add(other.exact));
    }

    /** What remains, or nothing when the other is more: a reservoir is not emptier than empty. */
    public Volume less(Volume other) {
        return new Volume(Exact.most(BigFraction.ZERO, exact.subtract(other.exact)));
    }

    /** This less the other, with its sign. */
    public VolumeDifference minus(Volume other) {
        return new VolumeDifference(exact.subtract(other.exact));
    }

    /** The drug in it. */
    public Mass at(Concentration strength) {
        return new Mass(exact.multiply(strength.exact()));
    }

    /** How long it lasts at a flow that is not nothing. */
    public Elapsed at(FlowRate flow) {
        return Elapsed.hours(exact.divide(flow.exact()));
    }

    @Override
    public Unit unit() {
        return Unit.MILLILITRES;
    }

    @Override
    public int compareTo(Volume other) {
        return exact.compareTo(other.exact);
    }
}
