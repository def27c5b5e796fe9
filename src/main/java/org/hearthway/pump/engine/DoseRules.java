package org.hearthway.pump.engine;

/**
 * What a clinic holds doses against. It advises and refuses nothing.
 *
 * @param effectHours an effect of a test dose that lasts longer than this is not doubled for the first day, 4 to 24
 * @param usualIncrease usual step up while the dose is being found, for children and for tone of cerebral origin
 * @param spinalIncrease the same for adults with tone of spinal origin
 * @param upkeepIncrease usual step up later
 * @param decrease usual step down
 * @param cautionPercent a step up of more than this may be too much, 5 to 100
 * @param underTwelve range of the trials below 12 years
 * @param fromTwelve the same from 12 years on
 * @param mostCerebral where most patients end, tone of cerebral origin
 * @param mostSpinal the same, spinal origin
 */
public record DoseRules(
        int effectHours,
        PercentRange usualIncrease,
        PercentRange spinalIncrease,
        PercentRange upkeepIncrease,
        PercentRange decrease,
        int cautionPercent,
        DoseRange underTwelve,
        DoseRange fromTwelve,
        DoseRange mostCerebral,
        DoseRange mostSpinal) {

    private static final int LEAST_HOURS = 4;
    private static final int MOST_HOURS = 24;
    private static final int LEAST_CAUTION = 5;
    private static final int MOST_CAUTION = 100;

    /** @throws org.hearthway.base.Invalid naming the bound that is broken */
    public DoseRules {
        Bounds.whole("effectHours", effectHours, LEAST_HOURS, MOST_HOURS, Unit.HOURS);
        Bounds.whole("cautionPercent", cautionPercent, LEAST_CAUTION, MOST_CAUTION, Unit.PERCENT);
    }

    /**
     * 8 hours, steps of 5 to 15 (spinal, adult: 10 to 30), later 5 to 20, down 10 to 20 percent (Boster, Neuromodulation
     * 2016;19(6):623-631, US label); 24 to 1199 and 22 to 1400 micrograms a day (US label, from memory); most at 90 to
     * 703 and 300 to 800 (US label).
     */
    public static DoseRules usual() {
        return new DoseRules(
                8,
                new PercentRange(5, 15),
                new PercentRange(10, 30),
                new PercentRange(5, 20),
                new PercentRange(10, 20),
                20,
                DoseRange.of("24", "1199"),
                DoseRange.of("22", "1400"),
                DoseRange.of("90", "703"),
                DoseRange.of("300", "800"));
    }

    /** The same with another limit for the effect of a test dose. */
    public DoseRules withEffectHours(int hours) {
        return new DoseRules(
                hours,
                usualIncrease,
                spinalIncrease,
                upkeepIncrease,
                decrease,
                cautionPercent,
                underTwelve,
                fromTwelve,
                mostCerebral,
                mostSpinal);
    }
}
