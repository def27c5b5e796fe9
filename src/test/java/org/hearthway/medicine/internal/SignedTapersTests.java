package org.hearthway.medicine.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.medicine.MedicineId;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.Stop;
import org.hearthway.medicine.Tapers;
import org.hearthway.medicine.Tapers.After;
import org.hearthway.medicine.Tapers.TaperData;
import org.hearthway.medicine.engine.TaperCalendar;
import org.hearthway.medicine.engine.TaperCalendar.Step;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026. */
@SpringJUnitConfig(CheckedMedicinesTests.Setting.class)
class SignedTapersTests {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 14);
    private static final LocalDate STOP = FIRST.plusDays(21);

    @Autowired
    private Medicines medicines;

    @Autowired
    private Tapers tapers;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private Words words;

    private final Viewer nurse = People.with(Role.NURSE);
    private final Viewer physician = People.with(Role.PHYSICIAN);
    private final Viewer parent = People.with(Role.CAREGIVER);
    private final ChildId child = ChildId.random();
    private MedicineId medicine = MedicineId.random();

    @BeforeEach
    void aCheckedMedicine() {
        gate.deny();
        medicine = medicines
                .enter(nurse, child, CheckedMedicinesTests.typed("10 mg"))
                .id();
        medicines.confirm(physician, child, medicine, CheckedMedicinesTests.again("10 mg"), 1);
    }

    private static Step step(int day, String dose) {
        return new Step(FIRST.plusDays(day), dose);
    }

    private static TaperData stopping(Step... steps) {
        return new TaperData(Arrays.asList(steps), Optional.of(After.STOP), Optional.of(STOP));
    }

    private static TaperData usual() {
        return stopping(step(0, "7.5 mg at night"), step(7, "5 mg at night"), step(14, "2.5 mg at night"));
    }

    private List<Problem> refusal(Runnable act) {
        var refused = catchThrowableOfType(Invalid.class, act::run).problems();
        refused.forEach(problem -> assertThat(words.say(Language.ES, problem)).doesNotContain("{"));
        return refused;
    }

    private Optional<TaperCalendar> familys() {
        return medicines.shown(parent, child).lines().stream()
                .flatMap(line -> line.calendar().stream())
                .findFirst();
    }

    @Test
    void theFamilySeesACalendarOnceASecondPersonTypedTheSame() {
        tapers.sign(physician, child, medicine, usual(), 0);
        assertThat(familys()).isEmpty();
        assertThat(medicines.shown(parent, child).writing()).isTrue();
        assertThat(tapers.changeDays(parent, child)).isEmpty();
        tapers.confirm(nurse, child, medicine, usual(), 1);
        assertThat(familys().orElseThrow().steps()).isEqualTo(usual().steps());
        assertThat(tapers.changeDays(parent, child))
                .containsExactly(FIRST, FIRST.plusDays(7), FIRST.plusDays(14), STOP);
    }

    @Test
    void aRowThatDiffersIsNamedAndItsDoseIsNot() {
        tapers.sign(physician, child, medicine, usual(), 0);
        var copy = stopping(step(0, "7.5 mg at night"), step(7, "50 mg at night"), step(14, "2.5 mg at night"));
        var problems = refusal(() -> tapers.confirm(nurse, child, medicine, copy, 1));
        assertThat(problems).extracting(Problem::field).containsExactly("dose1");
        assertThat(words.say(Language.EN, problems.get(0))).contains("Row 2").doesNotContain("5 mg");
        assertThat(familys()).isEmpty();
    }

    @Test
    void whatFollowsTheLastRowIsTypedAgainToo() {
        tapers.sign(physician, child, medicine, usual(), 0);
        var staying = new TaperData(usual().steps(), Optional.of(After.STAY), Optional.empty());
        assertThat(refusal(() -> tapers.confirm(nurse, child, medicine, staying, 1)))
                .extracting(Problem::field)
                .containsExactly("stopsOn");
    }

    @Test
    void nobodyIsTheirOwnSecond() {
        tapers.sign(physician, child, medicine, usual(), 0);
        assertThat(refusal(() -> tapers.confirm(physician, child, medicine, usual(), 1)))
                .extracting(Problem::key)
                .containsExactly("medicine.problem.same-person");
    }

    @Test
    void refusesDaysThatDoNotAscendAndTwoDosesOfOneDay() {
        var mixed = stopping(step(7, "5 mg"), step(0, "7.5 mg"), step(0, "2.5 mg"));
        assertThat(refusal(() -> tapers.sign(physician, child, medicine, mixed, 0)))
                .extracting(Problem::field)
                .containsExactly("from1", "from2");
    }

    @Test
    void refusesACalendarThatDoesNotSayWhatFollows() {
        var open = new TaperData(usual().steps(), Optional.empty(), Optional.empty());
        assertThat(refusal(() -> tapers.sign(physician, child, medicine, open, 0)))
                .extracting(Problem::field)
                .containsExactly("after");
        var early = new TaperData(usual().steps(), Optional.of(After.STOP), Optional.of(FIRST.plusDays(14)));
        assertThat(refusal(() -> tapers.sign(physician, child, medicine, early, 0)))
                .extracting(Problem::field)
                .containsExactly("stopsOn");
        var both = new TaperData(usual().steps(), Optional.of(After.STAY), Optional.of(STOP));
        assertThat(refusal(() -> tapers.sign(physician, child, medicine, both, 0)))
                .extracting(Problem::field)
                .containsExactly("stopsOn");
    }

    @Test
    void refusesNoRowsEmptyDosesAndYearsThatSlipped() {
        assertThat(refusal(() -> tapers.sign(physician, child, medicine, stopping(), 0)))
                .extracting(Problem::field)
                .containsExactly("steps");
        var slipped = stopping(step(0, " "), new Step(FIRST.plusYears(10), "5 mg"));
        assertThat(refusal(() -> tapers.sign(physician, child, medicine, slipped, 0)))
                .extracting(Problem::field)
                .containsExactly("dose0", "from1", "stopsOn");
    }

    @Test
    void aNewDoseOfTheMedicineEndsItsCalendar() {
        tapers.sign(physician, child, medicine, usual(), 0);
        tapers.confirm(nurse, child, medicine, usual(), 1);
        medicines.change(nurse, child, medicine, CheckedMedicinesTests.typed("20 mg"), 1);
        // until the new dose is checked the family keeps what was checked, and nobody is reminded of it
        assertThat(familys()).isPresent();
        assertThat(medicines.shown(parent, child).writing()).isTrue();
        assertThat(tapers.changeDays(parent, child)).isEmpty();
        medicines.confirm(physician, child, medicine, CheckedMedicinesTests.again("20 mg"), 2);
        assertThat(familys()).isEmpty();
        assertThat(tapers.current(nurse, child).get(medicine).holds()).isFalse();
    }

    @Test
    void anotherWordingOfWhatItIsForLeavesTheCalendar() {
        tapers.sign(physician, child, medicine, usual(), 0);
        tapers.confirm(nurse, child, medicine, usual(), 1);
        var same = CheckedMedicinesTests.typed("10 mg");
        var reworded = new Medicines.MedicineData(
                same.name(),
                same.form(),
                same.how(),
                same.dose(),
                same.quantity(),
                "to sleep",
                "",
                same.since(),
                same.prescriber(),
                same.stop());
        medicines.change(nurse, child, medicine, reworded, 1);
        medicines.confirm(physician, child, medicine, CheckedMedicinesTests.again("10 mg"), 2);
        assertThat(familys()).isPresent();
    }

    @Test
    void aMedicineThatStoppedTakesNoCalendar() {
        var stop = new Stop(LocalDate.of(2026, 3, 10), "No longer needed");
        medicines.change(
                nurse, child, medicine, CheckedMedicinesTests.typed("10 mg", Optional.empty(), Optional.of(stop)), 1);
        assertThat(refusal(() -> tapers.sign(physician, child, medicine, usual(), 0)))
                .extracting(Problem::key)
                .containsExactly("medicine.problem.taper-stopped");
    }

    @Test
    void ofTwoWhoSignOrConfirmAtOnceTheSecondIsTold() {
        tapers.sign(physician, child, medicine, usual(), 0);
        assertThatThrownBy(() -> tapers.sign(physician, child, medicine, usual(), 0))
                .isInstanceOf(Overtaken.class);
        tapers.confirm(nurse, child, medicine, usual(), 1);
        assertThatThrownBy(() -> tapers.confirm(nurse, child, medicine, usual(), 1))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void askTheGate() {
        gate.deny(Action.SIGN_MEDICINE);
        assertThatThrownBy(() -> tapers.sign(nurse, child, medicine, usual(), 0))
                .isInstanceOf(NotAvailable.class);
        gate.deny(Action.RECORD_MEDICINE);
        tapers.sign(physician, child, medicine, usual(), 0);
        assertThatThrownBy(() -> tapers.confirm(nurse, child, medicine, usual(), 1))
                .isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_FAMILY_PAGES, Action.SEE_FOLDER);
        assertThatThrownBy(() -> tapers.current(nurse, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> tapers.changeDays(parent, child)).isInstanceOf(NotAvailable.class);
    }
}
