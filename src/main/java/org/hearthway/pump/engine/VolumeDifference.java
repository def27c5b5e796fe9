package org.hearthway.pump.engine;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One volume less another.
 *
 * @param exact mL; positive when the first is more
 */
public record VolumeDifference(BigFraction exact) implements Quantity {

    /** How far apart the two are. */
    public Volume size() {
        return new Volume(exact.abs());
    }

    @Override
    public Unit unit() {
        return Unit.MILLILITRES;
    }
}
