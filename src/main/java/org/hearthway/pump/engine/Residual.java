package org.hearthway.pump.engine;

import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What was found in a reservoir at a refill against what was expected, on every basis that is in use.
 *
 * @param expected what should be left
 * @param measured what was drawn out
 * @param difference measured less expected; positive when the pump gave less than planned
 * @param percentOfExpected the difference in percent of what was expected; empty, not computable, when nothing was
 * @param ratio delivered against planned; empty, not computable, when nothing was planned
 * @param percentOfPlanned less delivered than planned, in percent of it; empty as the ratio
 * @param exceeded limits of the clinic that are broken; empty when there is nothing to look into
 * @param rules those limits, with the basis that counts
 */
public record Residual(
        Volume expected,
        Volume measured,
        VolumeDifference difference,
        Optional<Amount> percentOfExpected,
        Optional<Amount> ratio,
        Optional<Amount> percentOfPlanned,
        Set<Limit> exceeded,
        ResidualRules rules,
        Derivation how) {

    /** A limit of the clinic. */
    public enum Limit {
        /** Of the volume. */
        VOLUME,
        /** Of the percentage on the clinic's basis. */
        PERCENT
    }

    /** Which list of usual things is to be gone through. */
    public enum Look {
        /** Nothing out of the usual. */
        NONE,
        /** More left than expected: catheter, stalled pump. */
        MORE_LEFT,
        /** Less left than expected: fluid beside the port, over-delivery. */
        LESS_LEFT
    }

    public Residual {
        exceeded = Set.copyOf(exceeded);
    }

    /** At a refill, from the history of the fill that ends with it. */
    public static Residual at(Reservoir reservoir, Instant refill, Volume measured, ResidualRules rules) {
        var working = new Derivation.Working();
        Usage.left(reservoir, refill, working);
        return of(reservoir.filling().volume(), reservoir.at(refill), measured, rules, working);
    }

    /**
     * From volumes alone.
     *
     * @param filled what was in the reservoir after the fill before
     */
    public static Residual of(Volume filled, Volume expected, Volume measured, ResidualRules rules) {
        return of(filled, expected, measured, rules, new Derivation.Working());
    }

    private static Residual of(
            Volume filled, Volume expected, Volume measured, ResidualRules rules, Derivation.Working working) {
        var e = Symbol.EXPECTED.is(expected);
        var m = Symbol.MEASURED.is(measured);
        var v = Symbol.VOLUME.is(filled);
        var difference = working.line(Formula.DIFFERENCE, Symbol.DIFFERENCE, measured.minus(expected), m, e);
        var ofExpected = share(difference, expected.exact())
                .map(share -> working.line(
                        Formula.PERCENT_OF_EXPECTED,
                        Symbol.PERCENT,
                        Amount.percent(share.multiply(Exact.HUNDRED)),
                        m,
                        e));
        var planned = filled.minus(expected);
        var ratio = share(filled.minus(measured), planned.exact())
                .map(share -> working.line(Formula.RATIO, Symbol.RATIO, Amount.ratio(share), v, m, e));
        var ofPlanned = ratio.map(delivered -> working.line(
                Formula.PERCENT_OF_PLANNED,
                Symbol.PERCENT,
                Amount.percent(BigFraction.ONE.subtract(delivered.exact()).multiply(Exact.HUNDRED)),
                Symbol.RATIO.is(delivered)));
        var exceeded = EnumSet.noneOf(Limit.class);
        if (difference.size().compareTo(rules.volume()) > 0) {
            exceeded.add(Limit.VOLUME);
        }
        var onBasis = rules.basis() == ResidualRules.Basis.EXPECTED_RESIDUAL ? ofExpected : ofPlanned;
        if (onBasis.map(percent -> percent.exact().abs().compareTo(BigFraction.of(rules.percent())) > 0)
                .orElse(false)) {
            exceeded.add(Limit.PERCENT);
        }
        return new Residual(
                expected, measured, difference, ofExpected, ratio, ofPlanned, exceeded, rules, working.done());
    }

    private static Optional<BigFraction> share(VolumeDifference part, BigFraction whole) {
        return whole.signum() == 0 ? Optional.empty() : Optional.of(part.exact().divide(whole));
    }

    /** Whether there is something to look into. */
    public boolean flagged() {
        return !exceeded.isEmpty();
    }

    /** Which list of usual things is to be gone through. */
    public Look look() {
        if (!flagged()) {
            return Look.NONE;
        }
        return difference.exact().signum() > 0 ? Look.MORE_LEFT : Look.LESS_LEFT;
    }

    /** The percentage on the basis that counts for the clinic; empty when it is not computable. */
    public Optional<Amount> percent() {
        return rules.basis() == ResidualRules.Basis.EXPECTED_RESIDUAL ? percentOfExpected : percentOfPlanned;
    }
}
