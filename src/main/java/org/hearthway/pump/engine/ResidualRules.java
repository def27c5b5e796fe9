package org.hearthway.pump.engine;

/**
 * What a clinic keeps to when it measures what is in a reservoir.
 *
 * @param volume a larger difference from what was expected is looked into, 0.1 to 10 mL
 * @param basis what a difference is a percentage of
 * @param percent a larger percentage is looked into, 1 to 100
 * @param afterFill a larger difference right after a fill is looked into, for reservoirs below {@code large}, 0.1 to
 *     10 mL
 * @param afterLargeFill the same for reservoirs from {@code large} on
 * @param large 5 to 60 mL
 */
public record ResidualRules(
        Volume volume, Basis basis, int percent, Volume afterFill, Volume afterLargeFill, Volume large) {

    /** What a difference is a percentage of; the two disagree, so it is said beside the number. */
    public enum Basis {
        /** The volume that was expected to be left. */
        EXPECTED_RESIDUAL,
        /** The volume that was planned to be delivered. 15 is a ratio outside of 0.85 to 1.15. */
        PLANNED_DELIVERY
    }

    private static final int MOST_PERCENT = 100;

    /** @throws org.hearthway.base.Invalid naming the bound that is broken */
    public ResidualRules {
        limit("volume").computed(volume.exact());
        limit("afterFill").computed(afterFill.exact());
        limit("afterLargeFill").computed(afterLargeFill.exact());
        Bounds.of("large", "5", "60", 4, Unit.MILLILITRES).computed(large.exact());
        Bounds.whole("percent", percent, 1, MOST_PERCENT, Unit.PERCENT);
    }

    private static Bounds limit(String field) {
        return Bounds.of(field, "0.1", "10", 4, Unit.MILLILITRES);
    }

    /**
     * Over 2 mL, or over 15 percent of planned delivery (common practice); after a fill over 1 mL, and over 2 mL for
     * reservoirs from 40 mL on (Maino, Neuromodulation 2017;20(7):733-739).
     */
    public static ResidualRules usual() {
        return new ResidualRules(
                Volume.millilitres("2"),
                Basis.PLANNED_DELIVERY,
                15,
                Volume.millilitres("1"),
                Volume.millilitres("2"),
                Volume.millilitres("40"));
    }

    /** The same with another limit. */
    public ResidualRules with(Volume limit, Basis of, int limitPercent) {
        return new ResidualRules(limit, of, limitPercent, afterFill, afterLargeFill, large);
    }
}
