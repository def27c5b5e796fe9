package org.hearthway.pump.engine;

/**
 * A daily dose in all the units that a print-out may have.
 *
 * @param dose of a day
 * @param hourly of an hour
 * @param dailyVolume mL a day
 * @param flow mL an hour
 */
public record Conversion(DailyDose dose, Amount hourly, Amount dailyVolume, FlowRate flow, Derivation how) {

    /** Converts a dose at a strength. */
    public static Conversion of(DailyDose dose, Concentration strength) {
        var working = new Derivation.Working();
        var d = Symbol.DAILY_DOSE.is(dose);
        var c = Symbol.STRENGTH.is(strength);
        var flow = dose.rate().in(strength);
        var hourly = working.line(
                Formula.HOURLY_DOSE, Symbol.HOURLY_DOSE, dose.rate().perHour(), d);
        var volume = working.line(Formula.DAILY_VOLUME, Symbol.DAILY_VOLUME, flow.perDay(), d, c);
        working.line(Formula.FLOW, Symbol.FLOW, flow, d, c);
        return new Conversion(dose, hourly, volume, flow, working.done());
    }

    /**
     * The dose that a fixed flow gives.
     *
     * @throws org.hearthway.base.Invalid when that is no daily dose
     */
    public static Conversion ofFlow(FlowRate flow, Concentration strength) {
        var working = new Derivation.Working();
        var dose = working.line(
                Formula.DOSE_OF_FLOW,
                Symbol.DAILY_DOSE,
                new DailyDose(flow.at(strength).exact()),
                Symbol.STRENGTH.is(strength),
                Symbol.FLOW.is(flow));
        working.all(of(dose, strength).how());
        return new Conversion(dose, dose.rate().perHour(), flow.perDay(), flow, working.done());
    }
}
