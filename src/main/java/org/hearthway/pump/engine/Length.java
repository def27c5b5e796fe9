package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Length of a catheter.
 *
 * @param exact cm, 10 to 150
 */
public record Length(BigFraction exact) implements Quantity {

    private static final Bounds TYPED = Bounds.of("length", "10", "150", 2, Unit.CENTIMETRES);

    /** @throws org.hearthway.base.Invalid outside its bounds */
    public Length {
        TYPED.computed(exact);
    }

    /**
     * A length that a person typed.
     *
     * @param centimetres 10 to 150, at most 2 places after the point
     * @throws org.hearthway.base.Invalid naming the bounds
     */
    public static Length centimetres(BigDecimal centimetres) {
        return new Length(TYPED.typed(centimetres));
    }

    /** The same from a decimal in writing. */
    public static Length centimetres(String centimetres) {
        return centimetres(new BigDecimal(centimetres));
    }

    /** What a catheter of this length holds. */
    public Volume times(VolumePerLength bore) {
        return new Volume(exact.multiply(bore.exact()));
    }

    @Override
    public Unit unit() {
        return Unit.CENTIMETRES;
    }
}
