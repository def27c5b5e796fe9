package org.hearthway.pump.engine;

/**
 * The volume in a reservoir right after it was filled, against what was injected. A difference may mean that drug lies
 * beside the pump.
 *
 * @param difference injected less measured
 * @param limit of the clinic for a reservoir of this size
 * @param flagged whether the difference is larger, to either side
 */
public record AfterFill(
        Volume injected, Volume measured, VolumeDifference difference, Volume limit, boolean flagged, Derivation how) {

    /** Holds one against the other. */
    public static AfterFill check(PumpModel pump, Volume injected, Volume measured, ResidualRules rules) {
        var working = new Derivation.Working();
        var limit = pump.reservoir().compareTo(rules.large()) < 0 ? rules.afterFill() : rules.afterLargeFill();
        var difference = working.line(
                Formula.AFTER_FILL,
                Symbol.DIFFERENCE,
                injected.minus(measured),
                Symbol.INJECTED.is(injected),
                Symbol.MEASURED.is(measured));
        var flagged = difference.size().compareTo(limit) > 0;
        return new AfterFill(injected, measured, difference, limit, flagged, working.done());
    }
}
