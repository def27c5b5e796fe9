package org.hearthway.program;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * Times in which a home program rests as a whole. Nothing is planned on such a day, so that an illness or a holiday lowers
 * nobody's share of what was done. The family and the team both may say so, and go on again.
 */
public interface ProgramPauses {

    /** Why a program rests. */
    enum Why {
        ILL,
        HOLIDAY,
        HOSPITAL,
        OTHER
    }

    /**
     * What a person says.
     *
     * @param from first day of rest, at most {@link #DAYS_BACK} days ago and a year ahead
     * @param last last day of rest, not before the first and at most a year after it; empty until somebody goes on
     * @param why the kind of reason
     * @param note at most 500 characters, may be empty
     */
    record Asked(LocalDate from, Optional<LocalDate> last, Why why, String note) {}

    /** How many days back a pause may begin: the family often says so when the fever is over. */
    int DAYS_BACK = 14;

    /**
     * A pause as it holds.
     *
     * @param number by which it is named
     * @param from first day of rest
     * @param end the first day on which the program goes on; empty while nobody knows
     * @param why the kind of reason
     * @param note words, may be empty
     * @param by who said so
     * @param at when
     */
    record Pause(long number, LocalDate from, Optional<LocalDate> end, Why why, String note, String by, Instant at) {

        /** Whether the program rests on that day. */
        public boolean holdsOn(LocalDate day) {
            return !day.isBefore(from)
                    && end.filter(first -> !day.isBefore(first)).isEmpty();
        }
    }

    /** All pauses that hold or held on some day, the latest first; for whoever sees the week. */
    List<Pause> all(Viewer viewer, ChildId child);

    /**
     * Lets the program rest.
     *
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     */
    void pause(Viewer viewer, ChildId child, Asked asked);

    /**
     * Goes on again. A pause that has not begun is as if it had never been said.
     *
     * @param number of the pause
     * @param first the first day that is done again, not before the pause began
     * @throws org.hearthway.base.Overtaken when it has ended in the meantime
     */
    void goOn(Viewer viewer, ChildId child, long number, LocalDate first);
}
