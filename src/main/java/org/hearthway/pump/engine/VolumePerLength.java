package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a piece of catheter holds.
 *
 * @param exact mL per cm, 0.0005 to 0.05
 */
public record VolumePerLength(BigFraction exact) implements Quantity {

    private static final Bounds TYPED =
            Bounds.of("volumePerLength", "0.0005", "0.05", 6, Unit.MILLILITRES_PER_CENTIMETRE);

    /** @throws org.hearthway.base.Invalid outside its bounds */
    public VolumePerLength {
        TYPED.computed(exact);
    }

    /**
     * An amount that a person typed.
     *
     * @param millilitresPerCentimetre 0.0005 to 0.05, at most 6 places after the point
     * @throws org.hearthway.base.Invalid naming the bounds
     */
    public static VolumePerLength millilitresPerCentimetre(BigDecimal millilitresPerCentimetre) {
        return new VolumePerLength(TYPED.typed(millilitresPerCentimetre));
    }

    /** The same from a decimal in writing. */
    public static VolumePerLength millilitresPerCentimetre(String millilitresPerCentimetre) {
        return millilitresPerCentimetre(new BigDecimal(millilitresPerCentimetre));
    }

    @Override
    public Unit unit() {
        return Unit.MILLILITRES_PER_CENTIMETRE;
    }
}
