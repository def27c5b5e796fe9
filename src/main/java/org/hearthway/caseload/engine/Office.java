package org.hearthway.caseload.engine;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.function.UnaryOperator;

/**
 * When the team is at work.
 *
 * @param zone of the clinic's clock
 * @param closes first minute after office hours
 * @param openOnOrAfter the day itself when the clinic is open, else the next open day
 */
public record Office(ZoneId zone, LocalTime closes, UnaryOperator<LocalDate> openOnOrAfter) {

    /** The clinic's calendar day at a moment. */
    public LocalDate dayOf(Instant at) {
        return at.atZone(zone).toLocalDate();
    }

    /** The open day that still has office hours after the moment, or so many open days later. */
    public LocalDate workingDay(Instant at, int later) {
        var local = at.atZone(zone);
        var day = local.toLocalDate();
        return openDay(local.toLocalTime().isBefore(closes) ? day : day.plusDays(1), later);
    }

    /** The first open day on or after the day, or so many open days later. */
    public LocalDate openDay(LocalDate day, int later) {
        var open = openOnOrAfter.apply(day);
        for (int i = 0; i < later; i++) {
            open = openOnOrAfter.apply(open.plusDays(1));
        }
        return open;
    }
}
