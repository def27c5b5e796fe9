package org.hearthway.medicine.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
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
import org.hearthway.medicine.Medicines.Again;
import org.hearthway.medicine.Medicines.How;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.Medicines.Stop;
import org.hearthway.medicine.engine.Quantity;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026. */
@SpringJUnitConfig(CheckedMedicinesTests.Setting.class)
class CheckedMedicinesTests {

    @Import(LeanClinic.class)
    @ComponentScan("org.hearthway.medicine.internal")
    static class Setting {}

    static final LocalDate SINCE = LocalDate.of(2026, 1, 5);

    @Autowired
    private Medicines medicines;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private Words words;

    private final Viewer nurse = People.with(Role.NURSE);
    private final Viewer physician = People.with(Role.PHYSICIAN);
    private final Viewer parent = People.with(Role.CAREGIVER);
    private final ChildId child = ChildId.random();

    @BeforeEach
    void openTheGate() {
        gate.deny();
    }

    static MedicineData typed(String dose) {
        return typed(dose, Optional.empty(), Optional.empty());
    }

    static MedicineData typed(String dose, Optional<Quantity> quantity, Optional<Stop> stop) {
        return new MedicineData(
                "Gabapentin", "Syrup 50 mg/mL", How.MOUTH, dose, quantity, "pain", "dolor", SINCE, "Dr. Nwosu", stop);
    }

    static Again again(String dose) {
        return new Again(dose, Optional.empty(), Optional.empty());
    }

    private List<Problem> refusal(Runnable act) {
        var refused = catchThrowableOfType(Invalid.class, act::run).problems();
        refused.forEach(problem -> assertThat(words.say(Language.ES, problem)).doesNotContain("{"));
        return refused;
    }

    private MedicineId entered(String dose) {
        return medicines.enter(nurse, child, typed(dose)).id();
    }

    private List<String> dosesForTheFamily() {
        return medicines.shown(parent, child).lines().stream()
                .map(line -> line.medicine().data().dose())
                .toList();
    }

    @Test
    void theFamilySeesNoDoseBeforeASecondPersonTypedTheSame() {
        var id = entered("100 mg three times a day");
        assertThat(dosesForTheFamily()).isEmpty();
        assertThat(medicines.shown(parent, child).writing()).isTrue();
        medicines.confirm(physician, child, id, again("100 mg three times a day"), 1);
        assertThat(dosesForTheFamily()).containsExactly("100 mg three times a day");
        assertThat(medicines.shown(parent, child).writing()).isFalse();
    }

    @Test
    void aChangedDoseLeavesTheFormerOneUntilItIsChecked() {
        var id = entered("100 mg three times a day");
        medicines.confirm(physician, child, id, again("100 mg three times a day"), 1);
        medicines.change(nurse, child, id, typed("200 mg three times a day"), 1);
        var shown = medicines.shown(parent, child);
        assertThat(dosesForTheFamily()).containsExactly("100 mg three times a day");
        assertThat(shown.writing()).isTrue();
        assertThat(shown.lines().get(0).changing()).isTrue();
        medicines.confirm(physician, child, id, again("200 mg three times a day"), 2);
        assertThat(dosesForTheFamily()).containsExactly("200 mg three times a day");
    }

    @Test
    void anotherDoseIsNotConfirmedNorIsToldWhatTheFirstWas() {
        var id = entered("2.5 mg at night");
        var problems = refusal(() -> medicines.confirm(physician, child, id, again("25 mg at night"), 1));
        assertThat(problems).extracting(Problem::field).containsExactly("dose");
        assertThat(words.say(Language.EN, problems.get(0))).doesNotContain("2.5");
        assertThat(dosesForTheFamily()).isEmpty();
    }

    @Test
    void anAmountThatWasTypedIsTypedAgainWithItsUnit() {
        var five = Optional.of(new Quantity(new BigDecimal("5"), Quantity.Unit.MILLIGRAM));
        var id = medicines
                .enter(nurse, child, typed("5 mg at night", five, Optional.empty()))
                .id();
        var slip = Optional.of(new Quantity(new BigDecimal("5"), Quantity.Unit.MILLILITRE));
        assertThat(refusal(() ->
                        medicines.confirm(physician, child, id, new Again("5 mg at night", slip, Optional.empty()), 1)))
                .extracting(Problem::field)
                .containsExactly("quantity");
        var same = Optional.of(new Quantity(new BigDecimal("5.00"), Quantity.Unit.MILLIGRAM));
        medicines.confirm(physician, child, id, new Again("5 mg at night", same, Optional.empty()), 1);
        assertThat(dosesForTheFamily()).hasSize(1);
    }

    @Test
    void nobodyIsTheirOwnSecond() {
        var id = entered("5 mg");
        assertThat(refusal(() -> medicines.confirm(nurse, child, id, again("5 mg"), 1)))
                .extracting(Problem::key)
                .containsExactly("medicine.problem.same-person");
    }

    @Test
    void aMedicineThatStoppedIsConfirmedByItsDay() {
        var id = entered("5 mg");
        medicines.confirm(physician, child, id, again("5 mg"), 1);
        var stop = new Stop(LocalDate.of(2026, 3, 10), "No longer needed");
        medicines.change(nurse, child, id, typed("5 mg", Optional.empty(), Optional.of(stop)), 1);
        assertThat(medicines
                        .shown(parent, child)
                        .lines()
                        .get(0)
                        .medicine()
                        .data()
                        .stop())
                .isEmpty();
        var otherDay = new Again("", Optional.empty(), Optional.of(LocalDate.of(2026, 3, 11)));
        assertThat(refusal(() -> medicines.confirm(physician, child, id, otherDay, 2)))
                .extracting(Problem::field)
                .containsExactly("stoppedOn");
        medicines.confirm(physician, child, id, new Again("", Optional.empty(), Optional.of(stop.on())), 2);
        assertThat(medicines
                        .shown(parent, child)
                        .lines()
                        .get(0)
                        .medicine()
                        .data()
                        .stop())
                .contains(stop);
    }

    @Test
    void ofTwoWhoWriteOrConfirmAtOnceTheSecondIsToldAndEveryVersionStays() {
        var id = entered("5 mg");
        medicines.change(nurse, child, id, typed("6 mg"), 1);
        assertThatThrownBy(() -> medicines.change(physician, child, id, typed("7 mg"), 1))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> medicines.confirm(physician, child, id, again("5 mg"), 1))
                .isInstanceOf(Overtaken.class);
        medicines.confirm(physician, child, id, again("6 mg"), 2);
        assertThatThrownBy(() -> medicines.confirm(physician, child, id, again("6 mg"), 2))
                .isInstanceOf(Overtaken.class);
        assertThat(medicines.history(nurse, child, id))
                .extracting(version -> version.data().dose())
                .containsExactly("6 mg", "5 mg");
    }

    @Test
    void saysAllThatIsWrongAtOnce() {
        var wrong = new MedicineData(
                " ",
                "x".repeat(121),
                How.MOUTH,
                "",
                Optional.empty(),
                "",
                " ",
                LocalDate.of(2026, 9, 1),
                "",
                Optional.of(new Stop(LocalDate.of(2026, 3, 13), "")));
        assertThat(refusal(() -> medicines.enter(nurse, child, wrong)))
                .extracting(Problem::field)
                .containsExactlyInAnyOrder(
                        "name", "form", "dose", "prescriber", "purposeEn", "since", "stoppedOn", "stopReason");
    }

    @Test
    void aMedicineOfAnotherChildIsNone() {
        var id = entered("5 mg");
        assertThatThrownBy(() -> medicines.change(nurse, ChildId.random(), id, typed("6 mg"), 1))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> medicines.confirm(physician, ChildId.random(), id, again("5 mg"), 1))
                .isInstanceOf(NotAvailable.class);
    }

    @Test
    void askTheGate() {
        var id = entered("5 mg");
        gate.deny(Action.RECORD_MEDICINE);
        assertThatThrownBy(() -> medicines.enter(nurse, child, typed("5 mg"))).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> medicines.change(nurse, child, id, typed("5 mg"), 1))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> medicines.confirm(physician, child, id, again("5 mg"), 1))
                .isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_FAMILY_PAGES, Action.SEE_FOLDER);
        assertThatThrownBy(() -> medicines.shown(parent, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> medicines.current(nurse, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> medicines.history(nurse, child, id)).isInstanceOf(NotAvailable.class);
    }
}
