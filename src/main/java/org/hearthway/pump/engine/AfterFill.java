package org.hearthway.pump.engine;

/**
 * The volume in a reservoir right after it was filled, against what was injected. A difference may mean that drug lies
 * beside the pump.
 *
 * @param difference injected less measured
 * @param limit of the clinic for a reservoir of this size
 * @param flagged whether the difference is larger, to either side
 */
public record AfterFill(Volume injected, Volume measured, VolumeDifference difference, Volume limit, boolean flagged) {

    /** Holds one against the other. */
    public static AfterFill check(PumpModel pump, Volume injected, Volume measured, ResidualRules rules) {
        var limit = pump.reservoir().compareTo(rules.large()) < 0 ? rules.afterFill() : rules.afterLargeFill();
        var difference = injected.minus(measured);
        return new AfterFill(
                injected, measured, difference, limit, difference.size().compareTo(limit) > 0);
    }
}
