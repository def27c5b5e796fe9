package org.hearthway.pump.engine;

/**
 * What happens in a {@link Bridge} when tubing and catheter hold another volume than was reckoned with. When they hold
 * less, new drug comes at the flow of the bridge; when they hold more, old drug comes at the flow that follows it.
 *
 * @param really what they hold
 * @param tooMuch whether the child gets too much, else too little
 * @param lasts for how long
 * @param received in that time
 * @param wanted in that time
 */
public record Wrong(Volume really, boolean tooMuch, Elapsed lasts, Mass received, Mass wanted, Derivation how) {

    /** How much too much or too little. */
    public Mass apart() {
        return new Mass(received.exact().subtract(wanted.exact()).abs());
    }

    /**
     * Reckons it.
     *
     * @param strength that comes while it lasts
     * @param flow that runs while it lasts
     */
    static Wrong of(Volume reckoned, Volume really, Concentration strength, DailyDose dose, FlowRate flow) {
        var working = new Derivation.Working();
        var daily = Symbol.DAILY_VOLUME.is(flow.perDay());
        var volume = really.minus(reckoned).size();
        var lasts = working.line(
                really.compareTo(reckoned) < 0 ? Formula.WRONG_HOURS : Formula.WRONG_HOURS_LARGER,
                Symbol.HOURS,
                volume.at(flow),
                Symbol.DEAD_VOLUME.is(reckoned),
                Symbol.REALLY.is(really),
                daily);
        var hours = Symbol.HOURS.is(lasts);
        var received = working.line(
                Formula.WRONG_RECEIVED,
                Symbol.RECEIVED,
                volume.at(strength),
                daily,
                hours,
                Symbol.STRENGTH.is(strength));
        var wanted = working.line(
                Formula.WRONG_WANTED, Symbol.PART, dose.rate().during(lasts), Symbol.DAILY_DOSE.is(dose), hours);
        return new Wrong(really, received.compareTo(wanted) > 0, lasts, received, wanted, working.done());
    }
}
