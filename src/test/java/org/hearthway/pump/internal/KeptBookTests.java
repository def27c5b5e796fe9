package org.hearthway.pump.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.hearthway.testing.PumpBooks.again;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.when;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Devices;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpBook.Again;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.KeyFigure;
import org.hearthway.pump.PumpSums.Attention;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Pumps.Concern;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Bridge;
import org.hearthway.pump.engine.BridgePlan;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Residual;
import org.hearthway.pump.engine.Shown;
import org.hearthway.pump.engine.Step;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.events.PumpEntered;
import org.hearthway.pump.events.PumpEntryChecked;
import org.hearthway.testing.Children;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026, 10:00 in New York. */
@SpringJUnitConfig(PumpSetting.class)
class KeptBookTests {

    private static final LocalDateTime IN = LocalDateTime.of(2025, 9, 2, 9, 0);
    private static final LocalDateTime FILLED = LocalDateTime.of(2026, 1, 15, 10, 0);
    private static final LocalDateTime LATER = LocalDateTime.of(2026, 3, 10, 10, 0);
    private static final LocalDate ALARM = LocalDate.of(2026, 4, 6);

    @Autowired
    private PumpBook book;

    @Autowired
    private Pumps pumps;

    @Autowired
    private Devices devices;

    @Autowired
    private ChildRegister register;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private PumpSetting.Heard heard;

    @Autowired
    private Words words;

    private final Viewer.Person nurse = People.with(Role.NURSE);
    private final Viewer.Person physician = People.with(Role.PHYSICIAN);
    private final ChildId child = ChildId.random();

    @BeforeEach
    void aChildWithAPump() {
        // who is not there is on no list
        jdbc.sql("insert into child (id, version, entered_at) values (?, 1, ?)")
                .params(child.value(), OffsetDateTime.parse("2026-01-02T10:00Z"))
                .update();
        gate.deny();
        heard.changes.clear();
        when(register.get(any(), any())).thenReturn(new Child(child, Children.data(), 1));
        onRecord(new PumpNow(true, IN.toLocalDate()));
    }

    private void onRecord(PumpNow pump) {
        when(devices.pumps()).thenReturn(Map.of(child, pump));
        when(devices.pump(child)).thenReturn(Optional.of(pump));
    }

    private PumpEntry write(NewEntry entry) {
        return book.enter(nurse, child, entry, book.history(nurse, child).size());
    }

    private void check(PumpEntry entry) {
        book.check(physician, child, entry.number(), again(entry));
    }

    /** Reference ITB-W3, first row: 20 mL of 500 mcg/mL at 110 mcg a day from January 15, 2026. */
    private void filled() {
        check(write(Pages.figures(IN)));
        check(write(Pages.firstRefill(FILLED, "500", "110", ALARM)));
    }

    private List<String> refusal(Runnable act) {
        var refused = catchThrowableOfType(Invalid.class, act::run).problems();
        for (var language : Language.values()) {
            refused.forEach(problem -> assertThat(words.say(language, problem)).doesNotContain("{", "??"));
        }
        return refused.stream().map(Problem::key).toList();
    }

    @Test
    void aRefillCountsOnceASecondPersonTypedTheSame() {
        check(write(Pages.figures(IN)));
        var entry = write(Pages.firstRefill(FILLED, "500", "110", ALARM));
        assertThat(pumps.refill(nurse, child)).hasValueSatisfying(refill -> {
            assertThat(refill.beingChecked()).isTrue();
            assertThat(refill.window()).as("no date before the check").isEmpty();
            assertThat(refill.filled()).isEqualTo(FILLED.toLocalDate());
        });
        check(entry);
        assertThat(pumps.refill(nurse, child)).hasValueSatisfying(refill -> {
            assertThat(refill.beingChecked()).isFalse();
            // ITB-W3: alarm on April 6, refill by April 1, a Wednesday
            assertThat(refill.window().orElseThrow().alarm()).contains(ALARM);
            assertThat(refill.day()).contains(LocalDate.of(2026, 4, 1));
        });
        assertThat(heard.changes).hasAtLeastOneElementOfType(PumpEntered.class);
        assertThat(heard.changes.get(heard.changes.size() - 1))
                .isInstanceOfSatisfying(
                        PumpEntryChecked.class, told -> assertThat(told.words()).isPresent());
    }

    @Test
    void nobodyIsTheirOwnSecond() {
        var entry = write(Pages.figures(IN));
        assertThat(refusal(() -> book.check(nurse, child, entry.number(), again(entry))))
                .containsExactly("pump.problem.same-person");
    }

    @Test
    void otherNumbersDoNotCountAndTheFirstOnesAreNotTold() {
        check(write(Pages.figures(IN)));
        var entry = write(Pages.firstRefill(FILLED, "500", "110", ALARM));
        var figures = new HashMap<>(entry.what().keyFigures());
        figures.put(KeyFigure.INJECTED, Volume.millilitres("18"));
        figures.put(KeyFigure.PRINTED_ALARM, new Shown.Day(ALARM.plusDays(1)));
        var other = new Again(figures, Optional.of(Pages.setting("500", "110").dosing()));
        var refused = catchThrowableOfType(Invalid.class, () -> book.check(physician, child, entry.number(), other));
        assertThat(refused.problems())
                .extracting(Problem::field)
                .containsExactlyInAnyOrder("INJECTED", "PRINTED_ALARM");
        assertThat(refused.problems())
                .allSatisfy(problem -> assertThat(problem.args()).isEmpty());
        assertThat(pumps.refill(nurse, child).orElseThrow().beingChecked()).isTrue();
        // a figure that the first person did not write differs, too
        var more = new HashMap<>(entry.what().keyFigures());
        more.put(KeyFigure.WITHDRAWN, Volume.millilitres("3"));
        assertThat(refusal(() -> book.check(
                        physician,
                        child,
                        entry.number(),
                        new Again(more, Optional.of(Pages.setting("500", "110").dosing())))))
                .containsExactly("pump.problem.differs");
    }

    @Test
    void ofTwoWhoCheckAtOnceTheSecondIsTold() {
        var entry = write(Pages.figures(IN));
        check(entry);
        assertThatThrownBy(() -> book.check(People.with(Role.PHYSICIAN), child, entry.number(), again(entry)))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void ofTwoWhoWriteAtOnceTheSecondIsToldUnlessItIsAnEmergency() {
        write(Pages.figures(IN));
        var stale = Pages.firstRefill(FILLED, "500", "110", ALARM);
        assertThatThrownBy(() -> book.enter(nurse, child, stale, 0)).isInstanceOf(Overtaken.class);
        var urgent = book.enter(nurse, child, Pages.inAnEmergency(stale), 0);
        assertThat(urgent.number()).isEqualTo(2);
        assertThat(book.history(nurse, child).get(0).emergency()).isTrue();
        assertThat(urgent.isSure())
                .as("it waits for its second check like any other")
                .isFalse();
    }

    @Test
    void theCheckerSeesNothingOfTheFirstEntry() {
        write(Pages.figures(IN));
        assertThat(book.history(physician, child)).singleElement().satisfies(line -> {
            assertThat(line.waits()).isTrue();
            assertThat(line.entry()).isEmpty();
        });
        assertThat(book.history(nurse, child).get(0).entry()).isPresent();
        assertThat(book.outlook(physician, child).implant()).isEmpty();
    }

    @Test
    void whatIsOutOfTheUsualIsTakenWithWordsAlone() {
        filled();
        // 54 days less the hour of the clock change at 0.22 mL leave 8.13 mL; 12 mL is 3.87 mL more
        var odd = Pages.refill(LATER, "12", "500", "110", LocalDate.of(2026, 5, 30));
        var sums = book.reckon(nurse, child, odd);
        assertThat(sums.attention()).containsExactly(Attention.RESIDUAL);
        assertThat(sums.residual()).hasValueSatisfying(residual -> {
            assertThat(residual.expected().rounded(2)).isEqualByComparingTo("8.13");
            assertThat(residual.look()).isEqualTo(Residual.Look.MORE_LEFT);
        });
        assertThat(refusal(() -> write(odd))).containsExactly("pump.problem.unusual");
        var entry = write(Pages.said(odd));
        assertThat(entry.unusual()).isEqualTo(Pages.WHY);
        check(entry);
        assertThat(pumps.concerns(nurse, child)).extracting(Concern::kind).containsExactly(Concern.Kind.RESIDUAL);
        assertThat(book.outlook(nurse, child).refills())
                .singleElement()
                .satisfies(found -> assertThat(found.residual().flagged()).isTrue());
    }

    @Test
    void aDoseStepIsHeldAgainstTheRuleAndWaitsForItsCheckWhileTheEarlierDateStands() {
        filled();
        var step = Pages.dose(LATER, "500", "132");
        assertThat(book.reckon(nurse, child, step).step())
                .hasValueSatisfying(
                        found -> assertThat(found.percent().rounded(1)).isEqualByComparingTo("20"));
        var entry = write(Pages.said(step));
        // 8.12 mL at 0.264 mL a day come to 2 mL earlier than April 6
        var waiting = pumps.refill(nurse, child).orElseThrow();
        assertThat(waiting.beingChecked()).isFalse();
        assertThat(waiting.window().orElseThrow().alarm()).contains(LocalDate.of(2026, 4, 2));
        assertThat(pumps.running(nurse, child).orElseThrow().setting())
                .as("no dose is told that nobody checked")
                .isEmpty();
        check(entry);
        assertThat(pumps.running(nurse, child).orElseThrow().setting()).contains(Pages.setting("500", "132"));
        assertThat(heard.changes)
                .anySatisfy(change -> assertThat(change)
                        .isInstanceOfSatisfying(
                                PumpEntered.class,
                                entered -> assertThat(entered.doseChanged()).isTrue()));
    }

    /** Reference ITB-W9: tubing and catheter 0.40 mL, 500 to 2000 mcg/mL at 120 mcg a day: 200 mcg, 40 hours. */
    @Test
    void anotherStrengthAsksForABridgeAndNoNumberIsToldWithoutTheCatheter() {
        check(write(Pages.figures(IN)));
        check(write(Pages.firstRefill(FILLED, "500", "120", LocalDate.of(2026, 3, 31))));
        var change = Pages.refill(LATER, "7", "2000", "120", LocalDate.of(2026, 9, 1));
        var sums = book.reckon(nurse, child, change);
        assertThat(sums.attention()).contains(Attention.STRENGTH);
        assertThat(sums.bridge())
                .hasValueSatisfying(plan -> assertThat(plan).isInstanceOfSatisfying(Bridge.class, bridge -> {
                    assertThat(bridge.drug().rounded(1)).isEqualByComparingTo("200");
                    assertThat(bridge.lasts().rounded(1)).isEqualByComparingTo("40");
                }));
        check(write(Pages.figures(IN.plusMinutes(1), Optional.empty())));
        assertThat(book.reckon(nurse, child, change).bridge().orElseThrow()).isInstanceOf(BridgePlan.Missing.class);
    }

    @Test
    void aPrintOutThatDiffersIsFlaggedUntilSomebodyExplainsItAndTheEarlierStands() {
        check(write(Pages.figures(IN)));
        var entry = write(Pages.said(Pages.firstRefill(FILLED, "500", "110", ALARM.minusDays(4))));
        check(entry);
        assertThat(pumps.refill(nurse, child)
                        .orElseThrow()
                        .window()
                        .orElseThrow()
                        .alarm())
                .contains(ALARM.minusDays(4));
        assertThat(book.outlook(nurse, child).discrepancy()).isTrue();
        assertThat(pumps.concerns(nurse, child)).extracting(Concern::kind).containsExactly(Concern.Kind.PRINT_OUT);
        assertThat(refusal(() -> book.explain(nurse, child, entry.number(), " ")))
                .containsExactly("pump.problem.reason");
        book.explain(nurse, child, entry.number(), "the pump is set to sound at 3 mL");
        assertThat(book.outlook(nurse, child).discrepancy()).isFalse();
        assertThat(pumps.concerns(nurse, child)).isEmpty();
        assertThat(pumps.refill(nurse, child)
                        .orElseThrow()
                        .window()
                        .orElseThrow()
                        .alarm())
                .contains(ALARM.minusDays(4));
    }

    @Test
    void thePrintOutOfAFillSaysNothingOfALaterDose() {
        filled();
        check(write(Pages.said(Pages.dose(LATER, "500", "90"))));
        var window = pumps.refill(nurse, child).orElseThrow().window().orElseThrow();
        assertThat(window.printOut()).isEmpty();
        assertThat(window.alarm().orElseThrow()).isAfter(ALARM);
        assertThat(book.outlook(nurse, child).discrepancy()).isFalse();
    }

    @Test
    void whereNothingCanBeReckonedAChangeOfDoseBringsItsPrintOut() {
        check(write(Pages.elsewhere(FILLED, ALARM)));
        assertThat(refusal(() -> write(Pages.dose(LATER, "500", "90"))))
                .containsExactly("pump.problem.change.print-out");
        var urgent = write(Pages.inAnEmergency(Pages.dose(LATER, "500", "90")));
        check(urgent);
        assertThat(pumps.refill(nurse, child)
                        .orElseThrow()
                        .window()
                        .orElseThrow()
                        .alarm())
                .as("an older print-out is all that anybody knows")
                .contains(ALARM);
    }

    @Test
    void aWrongEntryGivesWayOnlyWhenItsCorrectionWasChecked() {
        filled();
        var right = write(Pages.correcting(Pages.firstRefill(FILLED, "500", "90", LocalDate.of(2026, 4, 25)), 2));
        assertThat(pumps.refill(nurse, child).orElseThrow().beingChecked())
                .as("nobody knows which of both holds")
                .isTrue();
        assertThat(book.outlook(nurse, child).setting()).contains(Pages.setting("500", "110"));
        check(right);
        assertThat(book.outlook(nurse, child).setting()).contains(Pages.setting("500", "90"));
        assertThat(book.history(nurse, child))
                .filteredOn(line -> line.number() == 2)
                .singleElement()
                .satisfies(line -> assertThat(line.superseded()).contains(3L));
    }

    @Test
    void anEntryThatNeverCountedGivesWayAtOnce() {
        check(write(Pages.figures(IN)));
        var wrong = write(Pages.firstRefill(FILLED, "500", "110", ALARM));
        write(Pages.correcting(Pages.firstRefill(FILLED, "500", "100", ALARM), wrong.number()));
        assertThatThrownBy(() -> check(wrong)).isInstanceOf(Overtaken.class);
        assertThat(pumps.waiting(nurse, child)).hasSize(1);
    }

    @Test
    void aRefillElsewhereIsTakenWithWhatIsKnown() {
        filled();
        check(write(Pages.elsewhere(LATER, LocalDate.of(2026, 6, 23))));
        assertThat(pumps.refill(nurse, child).orElseThrow()).satisfies(refill -> {
            assertThat(refill.window().orElseThrow().alarm()).contains(LocalDate.of(2026, 6, 23));
            assertThat(refill.day()).contains(LocalDate.of(2026, 6, 18));
        });
        assertThat(book.outlook(nurse, child).forecast())
                .as("nobody knows what is in it")
                .isEmpty();
    }

    @Test
    void bookKeepsSchedulesAndTwoWhoTypeTheStepsInAnotherOrderAgree() {
        filled();
        // ITB-W7: 175 mcg a day
        var night = Step.of("22:00", "06:00", "5");
        var morning = Step.of("06:00", "08:00", "15");
        var day = Step.of("08:00", "22:00", "7.5");
        var set = new PumpEntry.Setting(Pages.setting("500", "110").strength(), Dosing.cycle(night, morning, day));
        var entry = write(Pages.said(Pages.entry(LATER, new PumpEntry.Change(set, "by day", Optional.empty()))));
        assertThat(set.perDay().rounded(0)).isEqualByComparingTo("175");
        book.check(
                physician,
                child,
                entry.number(),
                new Again(entry.what().keyFigures(), Optional.of(Dosing.cycle(day, night, morning))));
        var kept = book.outlook(nurse, child).setting().orElseThrow();
        assertThat(((Dosing.Cycle) kept.dosing()).day().steps()).containsExactlyInAnyOrder(night, morning, day);
        assertThat(kept.perDay()).isEqualTo(set.perDay());
        assertThat(new DayPattern(
                                List.of(night, morning, day),
                                List.of(),
                                ((Dosing.Cycle) kept.dosing()).day().mode())
                        .steps())
                .hasSize(3);
    }

    @Test
    void saysAllThatIsWrongAtOnce() {
        filled();
        var odd = Pages.refill(LocalDateTime.of(2026, 3, 13, 10, 0), "21", "500", "110", LocalDate.of(2038, 1, 1));
        assertThat(refusal(() -> write(odd)))
                .contains("pump.problem.at.future", "pump.problem.alarm.far", "pump.problem.withdrawn.more");
        assertThat(refusal(() -> write(Pages.injected(LATER, "20.5")))).contains("pump.problem.overfilled");
        assertThat(refusal(() -> write(Pages.injected(LATER, "2")))).contains("pump.problem.injected.alarm");
        assertThat(refusal(() -> write(Pages.dose(IN.minusDays(1), "500", "100"))))
                .contains("pump.problem.at.before-pump");
        assertThat(refusal(
                        () -> write(Pages.elsewhere(LATER, LATER.toLocalDate().minusDays(1)))))
                .contains("pump.problem.alarm.before");
    }

    @Test
    void reckonsAsFarAsItIsWrittenAndSavesNothingHalf() {
        filled();
        var half = Pages.entry(
                LATER,
                new PumpEntry.Refill(
                        false,
                        RefillDetails.NONE,
                        Optional.of(Volume.millilitres("8")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        5));
        assertThat(book.reckon(nurse, child, half).residual()).isPresent();
        assertThat(refusal(() -> write(half)))
                .containsExactlyInAnyOrder("pump.problem.injected.missing", "pump.problem.setting.missing");
    }

    @Test
    void inAnEmergencyNobodyIsAskedWhy() {
        filled();
        var what = new PumpEntry.Change(Pages.setting("500", "300"), "", Optional.empty());
        assertThat(refusal(() -> write(new NewEntry(LATER, what, Optional.empty(), false, Pages.WHY))))
                .containsExactly("pump.problem.reason");
        var entry = write(new NewEntry(LATER, what, Optional.empty(), true, ""));
        assertThat(entry.emergency()).isTrue();
        assertThat(book.history(physician, child).get(0)).satisfies(line -> {
            assertThat(line.waits()).isTrue();
            assertThat(line.emergency()).isTrue();
        });
    }

    @Test
    void aPumpThatIsOutOrReplacedLeavesItsBookBehind() {
        filled();
        onRecord(new PumpNow(false, LocalDate.of(2026, 3, 10)));
        assertThat(pumps.refill(nurse, child)).isEmpty();
        assertThat(pumps.refills(nurse)).doesNotContainKey(child);
        assertThat(pumps.takenOutOn(nurse, child)).contains(LocalDate.of(2026, 3, 10));
        onRecord(new PumpNow(true, LocalDate.of(2026, 3, 11)));
        assertThat(pumps.refill(nurse, child)).isEmpty();
        assertThat(pumps.unfilledSince(nurse, child)).contains(LocalDate.of(2026, 3, 11));
        assertThat(book.outlook(nurse, child).setting()).isEmpty();
        assertThat(book.history(nurse, child)).hasSize(2);
    }

    @Test
    void asksTheGate() {
        gate.deny(Action.RECORD_PUMP);
        assertThatThrownBy(() -> write(Pages.figures(IN))).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> book.reckon(nurse, child, Pages.figures(IN))).isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_FOLDER);
        assertThatThrownBy(() -> book.history(nurse, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> book.outlook(nurse, child)).isInstanceOf(NotAvailable.class);
    }
}
