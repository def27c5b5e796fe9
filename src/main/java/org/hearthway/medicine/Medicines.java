package org.hearthway.medicine;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.medicine.engine.Quantity;
import org.hearthway.medicine.engine.TaperCalendar;

/**
 * The medicines a child takes, copied from prescriptions. The family sees a version of a line only once a second human
 * being has copied the same dose from the same prescription; until then it sees the former one.
 */
public interface Medicines {

    /** Most characters of a name, a form or a prescriber. */
    int NAME_MOST = 120;

    /** Most characters of a dose as written. */
    int DOSE_MOST = 300;

    /** Most characters of what it is for, in each language. */
    int PURPOSE_MOST = 200;

    /** Most characters of a reason for stopping. */
    int REASON_MOST = 300;

    /** How it is given. */
    enum How {
        MOUTH,
        TUBE,
        SKIN,
        RECTUM,
        NOSE,
        CHEEK,
        BREATH,
        INJECTION
    }

    /**
     * That it is no longer taken.
     *
     * @param on the first day without it, not in the future
     * @param reason 1 to {@value #REASON_MOST} characters
     */
    record Stop(LocalDate on, String reason) {}

    /**
     * A line as typed from the prescription.
     *
     * @param name generic name, 1 to {@value #NAME_MOST} characters
     * @param form strength and form, such as a syrup of some strength; may be empty
     * @param dose as on the prescription, 1 to {@value #DOSE_MOST} characters
     * @param quantity the amount of one dose with its unit, where somebody typed it
     * @param purposeEn what it is for, in English family words; one of the two languages is enough
     * @param purposeEs the same in Spanish
     * @param since first day, at most 25 years back and 90 days ahead
     * @param prescriber who prescribed it, 1 to {@value #NAME_MOST} characters
     * @param stop empty while it is taken
     */
    record MedicineData(
            String name,
            String form,
            How how,
            String dose,
            Optional<Quantity> quantity,
            String purposeEn,
            String purposeEs,
            LocalDate since,
            String prescriber,
            Optional<Stop> stop) {}

    /**
     * One version of a line. Later ones supersede earlier ones; none is altered.
     *
     * @param version 1, 2, 3 … within the medicine
     */
    record Medicine(
            MedicineId id,
            ChildId child,
            long version,
            MedicineData data,
            AccountId by,
            Instant at,
            Optional<SecondCheck> check) {}

    /**
     * What a second person reads on the prescription.
     *
     * @param dose as written; of a medicine that stopped, nothing
     * @param quantity the amount with its unit, when the first person typed one
     * @param stoppedOn the first day without it, of a medicine that stopped
     */
    record Again(String dose, Optional<Quantity> quantity, Optional<LocalDate> stoppedOn) {}

    /**
     * A line as the family sees it.
     *
     * @param medicine the newest version that two people checked
     * @param calendar its taper calendar, when a checked one holds
     * @param changing whether a change is being written down that is not checked yet
     */
    record Line(Medicine medicine, Optional<TaperCalendar> calendar, boolean changing) {}

    /**
     * What the family sees.
     *
     * @param lines checked lines, those taken first, then by name
     * @param writing whether anything is being written down that nobody has checked yet
     */
    record Shown(List<Line> lines, boolean writing) {
        public Shown {
            lines = List.copyOf(lines);
        }
    }

    /** The list as the family sees it. */
    Shown shown(Viewer viewer, ChildId child);

    /** The newest version of each line, those taken first, then by name; for the team. */
    List<Medicine> current(Viewer viewer, ChildId child);

    /** All versions of a line, newest first; for the team. */
    List<Medicine> history(Viewer viewer, ChildId child, MedicineId medicine);

    /**
     * Enters a medicine; it waits for its second check.
     *
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    Medicine enter(Viewer viewer, ChildId child, MedicineData data);

    /**
     * Writes a line anew; it waits for its second check.
     *
     * @param seen the version that the person saw as newest
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else wrote it in between
     */
    Medicine change(Viewer viewer, ChildId child, MedicineId medicine, MedicineData data, long seen);

    /**
     * Confirms the newest version by what a second person reads on the prescription.
     *
     * @throws org.hearthway.base.Invalid when it differs, or the person is the one who wrote it, also under another
     *     account
     * @throws org.hearthway.base.Overtaken when it is no longer newest or confirmed already
     */
    void confirm(Viewer viewer, ChildId child, MedicineId medicine, Again again, long seen);
}
