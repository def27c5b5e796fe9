package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.time.Period;

/**
 * When a pump is replaced.
 *
 * @param end elective replacement; where a month has no such day, its last one
 * @param planFrom when planning begins, never after the end
 */
public record ReplacementPlan(LocalDate implanted, LocalDate end, LocalDate planFrom, Derivation how) {

    /** Plans by the life of a pump. */
    public static ReplacementPlan of(LocalDate implanted, Period life, ReplacementRule rule) {
        var working = new Derivation.Working();
        var end = implanted.plus(life);
        working.day(
                Formula.REPLACEMENT,
                Symbol.END,
                end,
                Symbol.FIRST_DAY.is(implanted),
                Symbol.SPAN.is(Amount.count(life.toTotalMonths(), Unit.MONTHS)));
        var byRule = rule.planFrom(implanted, end);
        var planFrom = byRule.isAfter(end) ? end : byRule;
        var span = Symbol.SPAN.is(rule.span());
        if (rule instanceof ReplacementRule.YearsAfter) {
            working.day(Formula.PLAN_AFTER, Symbol.LATEST, planFrom, Symbol.FIRST_DAY.is(implanted), span);
        } else {
            working.day(Formula.PLAN_BEFORE, Symbol.LATEST, planFrom, Symbol.END.is(end), span);
        }
        return new ReplacementPlan(implanted, end, planFrom, working.done());
    }
}
