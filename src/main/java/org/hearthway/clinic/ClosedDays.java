package org.hearthway.clinic;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Viewer;

/** The days on which this clinic is closed besides the holidays that come every year. */
public interface ClosedDays {

    /** How far ahead a day may be closed, in years. */
    int YEARS_AHEAD = 3;

    /** Most characters of a name in one language. */
    int LONGEST_NAME = 80;

    /**
     * A day.
     *
     * @param day the day
     * @param name what it is, 1 to {@value #LONGEST_NAME} characters in each language
     * @param by who closed it
     * @param at when that was said
     * @param version the version that was read
     */
    record ClosedDay(LocalDate day, Bilingual name, AccountId by, Instant at, long version) {}

    /** The days that are closed now, from today on, soonest first; for administrators. */
    List<ClosedDay> ahead(Viewer viewer);

    /**
     * Closes the clinic on a day. Plans that used it move; visits that are booked on it stay until somebody moves them.
     *
     * @param day from today on, at most {@value #YEARS_AHEAD} years ahead, and one on which the clinic is open
     * @param english its name, 1 to {@value #LONGEST_NAME} characters
     * @param spanish its name in Spanish, within the same bounds
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     */
    void close(Viewer viewer, LocalDate day, String english, String spanish);

    /**
     * Opens it again on a day that was closed here; plans become what they were.
     *
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Overtaken when somebody else said it anew in between
     */
    void open(Viewer viewer, LocalDate day, long seen);
}
