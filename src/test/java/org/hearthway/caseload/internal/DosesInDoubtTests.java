package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.access.Accounts;
import org.hearthway.access.Passwords;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.Needs.Outcome;
import org.hearthway.caseload.engine.Gone;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.Again;
import org.hearthway.medicine.Medicines.How;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.Tapers;
import org.hearthway.medicine.engine.TaperCalendar;
import org.hearthway.pump.PumpBook;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.PumpBooks;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.Team;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** From a dose that one person wrote to the list and off it, from Thursday, March 12, 2026 on. */
@HearthwayTest
class DosesInDoubtTests {

    private static final LocalDate THURSDAY = LocalDate.of(2026, 3, 12);
    private static final Tapers.TaperData TAPER = new Tapers.TaperData(
            List.of(new TaperCalendar.Step(THURSDAY.plusDays(9), "5 mg at night")),
            Optional.of(Tapers.After.STAY),
            Optional.empty());

    @Autowired
    private Medicines medicines;

    @Autowired
    private Tapers tapers;

    @Autowired
    private PumpBook book;

    @Autowired
    private Needs needs;

    @Autowired
    private NeedsWatch watch;

    @Autowired
    private Standings standings;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private SettableClock clock;

    private Viewer.Person nurse = People.with(Role.NURSE);
    private Viewer.Person physician = People.with(Role.PHYSICIAN);
    private ChildId child = ChildId.random();

    @BeforeEach
    void aChildOfTwoColleagues() {
        nurse = Team.member(accounts, passwords, "Nell Rowan", Role.NURSE);
        physician = Team.member(accounts, passwords, "Dr. Ames", Role.PHYSICIAN);
        child = Children.enter(register);
    }

    private static MedicineData typed(String dose) {
        return new MedicineData(
                "Gabapentin",
                "Oral solution 50 mg/mL",
                How.MOUTH,
                dose,
                Optional.empty(),
                "pain",
                "dolor",
                THURSDAY,
                "Dr. Ames",
                Optional.empty());
    }

    private static Again again(String dose) {
        return new Again(dose, Optional.empty(), Optional.empty());
    }

    private void at(String local) {
        clock.set(LocalDateTime.parse(local).atZone(People.ZONE).toInstant());
        watch.look(child);
    }

    private List<Needs.Item> waiting() {
        return needs.open(nurse).stream()
                .filter(item -> item.child().equals(child) && item.cause().rule() == Rule.SECOND_CHECK)
                .toList();
    }

    private Needs.Item only() {
        assertThat(waiting()).hasSize(1);
        return waiting().get(0);
    }

    private Optional<Gone> gone() {
        return needs.left(nurse, HearthwayTest.START).stream()
                .filter(item -> item.child().equals(child))
                .findFirst()
                .flatMap(Needs.Item::left)
                .flatMap(Needs.Left::gone);
    }

    @Test
    void aMedicineStandsOnTheListFromTheNextOpenDayUntilSomebodyTypedItAgain() {
        at("2026-03-13T10:00:00");
        var medicine = medicines.enter(nurse, child, typed("3 mL at night"));
        at("2026-03-15T12:00:00");
        assertThat(waiting()).as("a weekend").isEmpty();
        at("2026-03-16T07:00:00");
        assertThat(only().cause().day()).isEqualTo("2026-03-13");
        assertThat(only().cause().dueDay()).isEqualTo("2026-03-16");

        medicines.confirm(physician, child, medicine.id(), again("3 mL at night"), 1);
        assertThat(waiting()).isEmpty();
        assertThat(gone()).contains(Gone.TYPED_AGAIN);
    }

    @Test
    void aCalendarWaitsAsLongAsItHolds() {
        at("2026-03-12T10:00:00");
        var medicine = medicines.enter(nurse, child, typed("3 mL at night"));
        medicines.confirm(physician, child, medicine.id(), again("3 mL at night"), 1);
        tapers.sign(physician, child, medicine.id(), TAPER, 0);
        at("2026-03-13T10:00:00");
        assertThat(only().cause().subject()).isEqualTo("CALENDAR/" + medicine.id() + "/1");

        tapers.confirm(nurse, child, medicine.id(), TAPER, 1);
        assertThat(waiting()).isEmpty();

        tapers.sign(physician, child, medicine.id(), TAPER, 1);
        at("2026-03-16T10:00:00");
        assertThat(only().cause().subject()).endsWith("/2");
        medicines.change(nurse, child, medicine.id(), typed("4 mL at night"), 1);
        assertThat(waiting()).as("another dose: the calendar holds no more").isEmpty();
        at("2026-03-17T10:00:00");
        assertThat(only().cause().subject()).isEqualTo("MEDICINE/" + medicine.id() + "/2");
    }

    @Test
    void theSettingOfAPumpWaitsLikewise() {
        at("2026-03-12T10:00:00");
        var entry = PumpBooks.set(book, nurse, child, "500", "120", THURSDAY);
        at("2026-03-13T08:00:00");
        assertThat(only().cause().subject()).isEqualTo("PUMP/entry/1");
        PumpBooks.check(book, physician, child, entry);
        assertThat(waiting()).isEmpty();
        assertThat(gone()).contains(Gone.TYPED_AGAIN);
    }

    @Test
    void itIsTakenUpLookedAtAndSetAsideButNoWordsCloseIt() {
        at("2026-03-12T10:00:00");
        var entry = PumpBooks.set(book, nurse, child, "500", "120", THURSDAY);
        at("2026-03-13T08:00:00");
        needs.take(physician, only().id(), only().version());
        needs.see(physician, only().id(), only().version());
        assertThat(only().owner().orElseThrow().name()).isEqualTo("Dr. Ames");
        assertThat(only().seen().orElseThrow().by().name()).isEqualTo("Dr. Ames");
        assertThatThrownBy(() ->
                        needs.close(physician, only().id(), Outcome.NOTHING, "it will be right", only().version()))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::key)
                                .containsExactly("caseload.close.cause-stands.SECOND_CHECK"));
        assertThatThrownBy(() -> needs.setAside(
                        physician, only().id(), THURSDAY.plusDays(5), "after the weekend", only().version()))
                .isInstanceOf(Invalid.class);
        needs.setAside(physician, only().id(), THURSDAY.plusDays(4), "after the weekend", only().version());
        assertThat(only().aside()).isPresent();
        PumpBooks.check(book, physician, child, entry);
        assertThat(waiting()).isEmpty();
    }

    @Test
    void itIsOutOfSightWhileNobodyWatchesTheChild() {
        at("2026-03-12T10:00:00");
        PumpBooks.set(book, nurse, child, "500", "120", THURSDAY);
        at("2026-03-13T08:00:00");
        var before = only();
        standings.say(nurse, child, new Standings.Saying(Status.LEFT, "moved abroad", Optional.empty()), 0);
        assertThat(waiting()).isEmpty();
        standings.takeBack(nurse, child, "they stay", 1);
        assertThat(only()).isEqualTo(before);
    }
}
