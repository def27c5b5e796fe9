package org.hearthway.clinic;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.Bilingual;

/** The days on which the clinic is open. */
public interface ClinicCalendar {

    /** Whether the clinic is open on the day: an office day and no holiday. */
    boolean isOpen(LocalDate day);

    /** The holiday's name on that day, if it is one. */
    Optional<Bilingual> holiday(LocalDate day);

    /** Counts what was said about closed days: while it is the same, every day is as it was. */
    long edition();

    /** The day itself when open, else the next open day. Looks at most a year ahead. */
    LocalDate onOrAfter(LocalDate day);

    /** The day itself when open, else the last open day before: for dates that must not slip. */
    LocalDate onOrBefore(LocalDate day);
}
