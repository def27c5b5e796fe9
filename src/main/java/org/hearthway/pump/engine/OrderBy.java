package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.function.Predicate;

/**
 * The last day to order the drug for a visit.
 *
 * @param day an open day, or the day itself when the clinic was closed for two months before it
 */
public record OrderBy(LocalDate visit, LocalDate day, Derivation how) {

    private static final Period FAR = Period.ofMonths(2);

    /** Counts back from a visit, and to an open day before. */
    public static OrderBy of(LocalDate visit, RefillRules rules, Predicate<LocalDate> open) {
        var working = new Derivation.Working();
        var wanted = visit.minusDays(rules.orderDays());
        working.day(
                Formula.ORDER,
                Symbol.LATEST_ANY,
                wanted,
                Symbol.VISIT.is(visit),
                Symbol.SPAN.is(Amount.count(rules.orderDays(), Unit.DAYS)));
        var day = OpenDays.earlier(wanted, wanted.minus(FAR), open).orElse(wanted);
        working.day(Formula.OPEN_DAY, Symbol.LATEST, day, Symbol.LATEST_ANY.is(wanted));
        return new OrderBy(visit, day, working.done());
    }
}
