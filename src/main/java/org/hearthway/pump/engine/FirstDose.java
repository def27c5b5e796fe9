package org.hearthway.pump.engine;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The usual daily dose right after implant, for the team to check: twice the test dose that worked, or the test dose
 * itself when its effect lasted longer than the clinic's limit.
 */
public record FirstDose(DailyDose dose, boolean doubled, Derivation how) {

    private static final Bounds TEST = Bounds.of("test", "10", "200", 3, Unit.MICROGRAMS);
    private static final Bounds EFFECT = Bounds.of("effect", "0", "72", 4, Unit.HOURS);

    /**
     * From a test.
     *
     * @param test 10 to 200 micrograms
     * @param effect how long it was seen, 0 to 72 hours
     * @throws org.hearthway.base.Invalid naming the bound that is broken
     */
    public static FirstDose after(Mass test, Elapsed effect, DoseRules rules) {
        TEST.computed(test.exact());
        EFFECT.computed(effect.exact());
        var doubled = effect.exact().compareTo(BigFraction.of(rules.effectHours())) <= 0;
        var factor = Amount.count(doubled ? 2 : 1, Unit.ONE);
        var working = new Derivation.Working();
        var dose = working.line(
                Formula.FIRST_DOSE,
                Symbol.DAILY_DOSE,
                new DailyDose(test.exact().multiply(factor.exact())),
                Symbol.TEST_DOSE.is(test),
                Symbol.FACTOR.is(factor));
        return new FirstDose(dose, doubled, working.done());
    }
}
