package org.hearthway.medicine;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.medicine.engine.TaperCalendar;

/**
 * Taper calendars: from which day which dose, typed and signed by a physician and typed again by a second person.
 * A calendar holds until the line of its medicine gets another dose or stops.
 */
public interface Tapers {

    /** Most rows of a calendar. */
    int STEPS_MOST = 60;

    /** Most characters of a row's dose. */
    int DOSE_MOST = 200;

    /** What follows the last row. */
    enum After {
        /** The last dose stays. */
        STAY,
        /** The medicine stops on a day. */
        STOP
    }

    /**
     * What a person types.
     *
     * @param steps 1 to {@value #STEPS_MOST} rows with days that ascend, at most 1 year back and 3 years ahead
     * @param after what follows the last row; it must be said
     * @param stopsOn for {@link After#STOP} the first day without the medicine, after the last row
     */
    record TaperData(List<TaperCalendar.Step> steps, Optional<After> after, Optional<LocalDate> stopsOn) {
        public TaperData {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A signed calendar. Later ones supersede earlier ones; none is altered.
     *
     * @param number 1, 2, 3 … within the medicine
     * @param holds whether the medicine still has the dose and form that it had when the calendar was signed
     */
    record Taper(
            MedicineId medicine,
            ChildId child,
            long number,
            TaperCalendar calendar,
            boolean holds,
            AccountId by,
            Instant at,
            Optional<SecondCheck> check) {}

    /** The newest calendar of each medicine that has one; for the team. */
    Map<MedicineId, Taper> current(Viewer viewer, ChildId child);

    /**
     * The days on which a checked calendar changes the dose. While a change to a medicine waits for its second check,
     * its days are left out: nobody may be reminded of what is in doubt.
     */
    SortedSet<LocalDate> changeDays(Viewer viewer, ChildId child);

    /**
     * Signs a calendar, as a physician; it waits for its second check.
     *
     * @param seen number of the calendar that the person saw as newest, 0 for none
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else signed one in between
     */
    Taper sign(Viewer viewer, ChildId child, MedicineId medicine, TaperData data, long seen);

    /**
     * Confirms the newest calendar by what a second person reads on the order, row by row.
     *
     * @throws org.hearthway.base.Invalid when it differs, or the person is the one who signed it, also under another
     *     account
     * @throws org.hearthway.base.Overtaken when it is no longer newest, no longer holds, or is confirmed already
     */
    void confirm(Viewer viewer, ChildId child, MedicineId medicine, TaperData again, long seen);
}
