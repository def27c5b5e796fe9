package org.hearthway.pump.engine;

/**
 * Everything about pumps that clinics do differently.
 *
 * @param refill when a refill is planned
 * @param residual what is measured at a refill
 * @param dose what doses are held against
 * @param bolus what a bolus does to the steps, for schedules that are entered
 * @param deadVolumePercent how wrong the volume of tubing and catheter may be, for the reckoning of a bridge, 5 to 50
 * @param primingHours how long a child is watched after priming, 8 to 48
 * @param replacement when a new pump is planned
 */
public record ClinicRules(
        RefillRules refill,
        ResidualRules residual,
        DoseRules dose,
        BolusMode bolus,
        int deadVolumePercent,
        int primingHours,
        ReplacementRule replacement) {

    private static final int LEAST_WRONG = 5;
    private static final int MOST_WRONG = 50;
    private static final int LEAST_WATCH = 8;
    private static final int MOST_WATCH = 48;

    /** @throws org.hearthway.base.Invalid naming the bound that is broken */
    public ClinicRules {
        Bounds.whole("deadVolumePercent", deadVolumePercent, LEAST_WRONG, MOST_WRONG, Unit.PERCENT);
        Bounds.whole("primingHours", primingHours, LEAST_WATCH, MOST_WATCH, Unit.HOURS);
    }

    /** What is usual, until a clinic says otherwise. */
    public static ClinicRules usual() {
        return new ClinicRules(
                RefillRules.usual(),
                ResidualRules.usual(),
                DoseRules.usual(),
                BolusMode.REPLACES_BASAL,
                25,
                LEAST_WATCH,
                new ReplacementRule.DaysBefore(90));
    }
}
