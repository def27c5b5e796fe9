package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The alarm date of a print-out against ours.
 *
 * @param stands the earlier of both
 * @param daysApart 0 or more
 * @param flagged whether they are further apart than the clinic lets pass
 */
public record PrintOutCheck(
        LocalDate ours, LocalDate printed, LocalDate stands, long daysApart, boolean flagged, Derivation how) {

    /** Holds one against the other. */
    public static PrintOutCheck of(LocalDate ours, LocalDate printed, RefillRules rules) {
        var working = new Derivation.Working();
        var apart = Math.abs(ChronoUnit.DAYS.between(ours, printed));
        var stands = working.day(
                Formula.EARLIER_OF_PRINT_OUT,
                Symbol.PLANNING_DAY,
                printed.isBefore(ours) ? printed : ours,
                Symbol.OUR_DAY.is(ours),
                Symbol.PRINTED_DAY.is(printed));
        return new PrintOutCheck(ours, printed, stands, apart, apart > rules.printOutDays(), working.done());
    }
}
