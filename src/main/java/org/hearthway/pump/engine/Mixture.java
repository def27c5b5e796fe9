package org.hearthway.pump.engine;

import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/**
 * What new drug becomes when some of the old was left in the reservoir.
 *
 * @param volume together
 * @param strength of the mixture
 */
public record Mixture(Volume volume, Concentration strength, Derivation how) {

    /**
     * Mixes.
     *
     * @param left what could not be drawn out
     * @throws Invalid when both are nothing
     */
    public static Mixture of(Volume left, Concentration old, Volume added, Concentration fresh) {
        var volume = left.plus(added);
        if (volume.equals(Volume.NONE)) {
            throw new Invalid(Problem.at("added", "pump.problem.nothing-added"));
        }
        var working = new Derivation.Working();
        var drug = left.at(old).plus(added.at(fresh));
        var strength = working.line(
                Formula.MIXTURE,
                Symbol.MIXTURE,
                new Concentration(drug.exact().divide(volume.exact())),
                Symbol.LEFT.is(left),
                Symbol.OLD_STRENGTH.is(old),
                Symbol.ADDED.is(added),
                Symbol.NEW_STRENGTH.is(fresh));
        return new Mixture(volume, strength, working.done());
    }

    /** In percent of the strength that the pump is told: so much of the dose that is set is really given. */
    public Amount percentOf(Concentration told) {
        return Amount.percent(strength.exact().divide(told.exact()).multiply(Exact.HUNDRED));
    }
}
