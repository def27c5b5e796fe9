package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.time.Period;

/**
 * Adding a period to a day and going back again. Months differ in length, so the way back is no subtraction: of the
 * days from 28 to 31 January all lead to 28 February. Adding never turns two days round, which makes both answers here
 * exact.
 */
final class Gaps {

    private Gaps() {}

    /** The last day from which the period does not lead past the bound. */
    static LocalDate lastLeadingTo(LocalDate bound, Period period) {
        if (period.toTotalMonths() == 0) {
            return roughly(bound, period);
        }
        var day = roughly(bound, period);
        while (day.plus(period).isAfter(bound)) {
            day = day.minusDays(1);
        }
        while (!day.plusDays(1).plus(period).isAfter(bound)) {
            day = day.plusDays(1);
        }
        return day;
    }

    /** The first day from which the period leads to the bound or past it. */
    static LocalDate firstLeadingTo(LocalDate bound, Period period) {
        if (period.toTotalMonths() == 0) {
            return roughly(bound, period);
        }
        var day = roughly(bound, period);
        while (day.plus(period).isBefore(bound)) {
            day = day.plusDays(1);
        }
        while (!day.minusDays(1).plus(period).isBefore(bound)) {
            day = day.minusDays(1);
        }
        return day;
    }

    /** Exact for periods of days alone. */
    private static LocalDate roughly(LocalDate bound, Period period) {
        return bound.minus(period);
    }
}
