package org.hearthway.medicine.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.Again;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.Medicines.Stop;
import org.hearthway.medicine.engine.AsWritten;

/** What a line of the list must be, and when two people copied the same. */
final class MedicineRules {

    private static final int YEARS_BACK = 25;
    private static final int DAYS_AHEAD = 90;

    private MedicineRules() {}

    static void check(MedicineData data, LocalDate today) {
        var problems = new ArrayList<Problem>();
        var texts = new TextBounds(problems);
        texts.needed("name", "medicine.problem.name", data.name(), Medicines.NAME_MOST);
        texts.atMost("form", "medicine.problem.form", data.form(), Medicines.NAME_MOST);
        texts.needed("dose", "medicine.problem.dose", data.dose(), Medicines.DOSE_MOST);
        texts.needed("prescriber", "medicine.problem.prescriber", data.prescriber(), Medicines.NAME_MOST);
        texts.atMost("purposeEn", "medicine.problem.purpose", data.purposeEn(), Medicines.PURPOSE_MOST);
        texts.atMost("purposeEs", "medicine.problem.purpose", data.purposeEs(), Medicines.PURPOSE_MOST);
        if (data.purposeEn().isBlank() && data.purposeEs().isBlank()) {
            problems.add(Problem.at("purposeEn", "medicine.problem.purpose", Medicines.PURPOSE_MOST));
        }
        if (data.since().isBefore(today.minusYears(YEARS_BACK)) || data.since().isAfter(today.plusDays(DAYS_AHEAD))) {
            problems.add(Problem.at("since", "medicine.problem.since", YEARS_BACK, DAYS_AHEAD));
        }
        data.stop().ifPresent(stop -> check(stop, data.since(), today, texts));
        Invalid.ifAny(problems);
    }

    private static void check(Stop stop, LocalDate since, LocalDate today, TextBounds texts) {
        if (stop.on().isBefore(since) || stop.on().isAfter(today)) {
            texts.problems().add(Problem.at("stoppedOn", "medicine.problem.stopped-on"));
        }
        texts.needed("stopReason", "medicine.problem.stop-reason", stop.reason(), Medicines.REASON_MOST);
    }

    /** Says which field differs, never what the first person typed: the second must read, not copy. */
    static void compare(MedicineData first, Again again) {
        var problems = new ArrayList<Problem>();
        if (first.stop().isPresent()) {
            if (!first.stop().map(Stop::on).equals(again.stoppedOn())) {
                differs(problems, "stoppedOn");
            }
        } else {
            if (!AsWritten.same(first.dose(), again.dose())) {
                differs(problems, "dose");
            }
            if (!first.quantity().equals(again.quantity())) {
                differs(problems, "quantity");
            }
        }
        Invalid.ifAny(problems);
    }

    private static void differs(List<Problem> problems, String field) {
        problems.add(Problem.at(field, "medicine.problem.differs"));
    }

    /** Whether both versions are taken alike, so that what was signed for one holds for the other. */
    static boolean takenAlike(MedicineData one, MedicineData other) {
        return one.stop().isEmpty()
                && other.stop().isEmpty()
                && one.name().equals(other.name())
                && one.form().equals(other.form())
                && one.how() == other.how()
                && one.dose().equals(other.dose())
                && one.quantity().equals(other.quantity());
    }
}
