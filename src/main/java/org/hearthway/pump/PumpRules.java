package org.hearthway.pump;

import java.math.BigDecimal;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.pump.engine.BolusMode;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.pump.engine.DoseRules;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.ReplacementRule;
import org.hearthway.pump.engine.ResidualRules;
import org.hearthway.pump.engine.Volume;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What the clinic keeps to for every pump ({@code hearthway.pump.*}); what practice differs on. Each stands beside the
 * result that rests on it. Common practice where no source is named in {@link ClinicRules} and its parts.
 *
 * @param marginDays days before the alarm by which a pump is refilled unless the nurse says otherwise, 3 to 14
 * @param windowDays length of the window before that day, 0 to 90
 * @param lifeLimitDays longest time the drug may stay in the reservoir, 1 to 180; the product label decides
 * @param orderDays from ordering the drug to the visit, 0 to 60
 * @param printOutDays how far a print-out may lie from our date before it is told, 0 to 7
 * @param residualVolume mL of difference at a refill that are looked into
 * @param residualBasis what the percentage is of
 * @param residualPercent percentage that is looked into
 * @param effectHours longest effect of a test dose that is still doubled
 * @param bolus whether a bolus replaces or adds to the steps
 * @param deadVolumePercent how wrong the volume of tubing and catheter may be
 * @param primingHours how long a child is watched after priming
 * @param replacementDays days before its end on which a new pump begins to be planned, 30 to 730
 * @param findingDays so many days after the implant the dose counts as being found, 0 to 365
 */
@ConfigurationProperties("hearthway.pump")
public record PumpRules(
        @DefaultValue("5") int marginDays,
        @DefaultValue("14") int windowDays,
        @DefaultValue("180") int lifeLimitDays,
        @DefaultValue("10") int orderDays,
        @DefaultValue("1") int printOutDays,
        @DefaultValue("2") BigDecimal residualVolume,
        @DefaultValue("PLANNED_DELIVERY") ResidualRules.Basis residualBasis,
        @DefaultValue("15") int residualPercent,
        @DefaultValue("8") int effectHours,
        @DefaultValue("REPLACES_BASAL") BolusMode bolus,
        @DefaultValue("25") int deadVolumePercent,
        @DefaultValue("8") int primingHours,
        @DefaultValue("90") int replacementDays,
        @DefaultValue("90") int findingDays) {

    /** Least days of margin. */
    public static final int LEAST_MARGIN = 3;

    /** Most days of margin. */
    public static final int MOST_MARGIN = 14;

    private static final int MOST_FINDING = 365;

    /** @throws IllegalArgumentException naming the setting and its bounds */
    public PumpRules {
        try {
            rules(
                    marginDays,
                    windowDays,
                    lifeLimitDays,
                    orderDays,
                    printOutDays,
                    residualVolume,
                    residualBasis,
                    residualPercent,
                    effectHours,
                    bolus,
                    deadVolumePercent,
                    primingHours,
                    replacementDays);
        } catch (Invalid outside) {
            throw new IllegalArgumentException(told(outside.problems().get(0)), outside);
        }
        if (findingDays < 0 || findingDays > MOST_FINDING) {
            throw new IllegalArgumentException("hearthway.pump.finding-days must be 0 to " + MOST_FINDING);
        }
    }

    private static String told(Problem problem) {
        return "hearthway.pump: " + problem.field() + " must be "
                + problem.args().get(0) + " to " + problem.args().get(1);
    }

    /** The same for the engine. */
    public ClinicRules clinic() {
        return rules(
                marginDays,
                windowDays,
                lifeLimitDays,
                orderDays,
                printOutDays,
                residualVolume,
                residualBasis,
                residualPercent,
                effectHours,
                bolus,
                deadVolumePercent,
                primingHours,
                replacementDays);
    }

    private static ClinicRules rules(
            int marginDays,
            int windowDays,
            int lifeLimitDays,
            int orderDays,
            int printOutDays,
            BigDecimal residualVolume,
            ResidualRules.Basis residualBasis,
            int residualPercent,
            int effectHours,
            BolusMode bolus,
            int deadVolumePercent,
            int primingHours,
            int replacementDays) {
        return new ClinicRules(
                new RefillRules(marginDays, windowDays, lifeLimitDays, orderDays, printOutDays),
                ResidualRules.usual().with(Volume.millilitres(residualVolume), residualBasis, residualPercent),
                DoseRules.usual().withEffectHours(effectHours),
                bolus,
                deadVolumePercent,
                primingHours,
                new ReplacementRule.DaysBefore(replacementDays));
    }
}
