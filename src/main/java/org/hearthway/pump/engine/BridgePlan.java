package org.hearthway.pump.engine;

import java.util.Set;

/** What can be said of a change of strength. No number is told that rests on a figure nobody has. */
public sealed interface BridgePlan
        permits Bridge, BridgePlan.Missing, BridgePlan.NotProgrammable, BridgePlan.NotNeeded {

    /** Nothing can be told before these figures are known. */
    record Missing(Set<Catheter.Figure> figures) implements BridgePlan {
        public Missing {
            figures = Set.copyOf(figures);
        }
    }

    /** A pump of fixed flow cannot be bridged by programming; this is what the child gets meanwhile. */
    record NotProgrammable(Unbridged meanwhile, Derivation how) implements BridgePlan {}

    /** Old and new strength are the same. */
    record NotNeeded() implements BridgePlan {}

    /**
     * What a child gets without a bridge, until the new drug arrives.
     *
     * @param received in a day
     * @param percent of the dose that is set
     * @param lasts how long
     */
    record Unbridged(DrugRate received, Amount percent, Elapsed lasts) {}

    /**
     * Reckons a change of strength.
     *
     * @param old strength in tubing and catheter
     * @param fresh strength of the new drug
     * @param dose that is wanted throughout
     * @param deadVolumePercent how wrong the volume of tubing and catheter may be, see {@link ClinicRules}
     */
    static BridgePlan of(
            PumpModel pump,
            Catheter catheter,
            Concentration old,
            Concentration fresh,
            DailyDose dose,
            int deadVolumePercent) {
        if (old.equals(fresh)) {
            return new NotNeeded();
        }
        if (!catheter.missing().isEmpty()) {
            return new Missing(catheter.missing());
        }
        return pump.fixedFlow()
                .<BridgePlan>map(flow -> Bridge.byFixedFlow(pump, catheter, old, fresh, flow))
                .orElseGet(() -> Bridge.of(pump, catheter, old, fresh, dose, deadVolumePercent));
    }
}
