package org.hearthway.pump.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Devices;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Pumps.Fill;
import org.hearthway.pump.Pumps.FillData;
import org.hearthway.pump.events.RefillDateChanged;
import org.hearthway.testing.LeanClinic;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026, 10:00 in New York. */
@SpringJUnitConfig(RecordedPumpsTests.Setting.class)
class RecordedPumpsTests {

    @Import(LeanClinic.class)
    @ComponentScan("org.hearthway.pump.internal")
    static class Setting {
        @Bean
        Devices devices() {
            return mock();
        }

        @Bean
        Heard heard() {
            return new Heard();
        }
    }

    /** Hears what pumps tell. */
    static class Heard {
        final List<RefillDateChanged> changes = new ArrayList<>();

        @EventListener
        void on(RefillDateChanged change) {
            changes.add(change);
        }
    }

    private static final Viewer NURSE =
            new Viewer.Person(AccountId.random(), "Nurse", Set.of(Role.NURSE), Language.EN, LeanClinic.NEW_YORK);
    private static final FillData FILL =
            new FillData(LocalDate.of(2026, 3, 3), LocalDate.of(2026, 6, 23), 5, " print-out of the day ");

    @Autowired
    private Pumps pumps;

    @Autowired
    private Devices devices;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private Heard heard;

    @Autowired
    private Words words;

    private final ChildId child = ChildId.random();

    @BeforeEach
    void openTheGate() {
        // who is not there is on no list
        jdbc.sql("insert into child (id, version, entered_at) values (?, 1, ?)")
                .params(child.value(), OffsetDateTime.parse("2026-01-02T10:00Z"))
                .update();
        gate.deny();
        heard.changes.clear();
    }

    @Test
    void asksForNoRefillOfAPumpThatWasTakenOut() {
        pumps.record(NURSE, child, FILL, 0);
        assertThat(pumps.refillDates(NURSE)).containsKey(child);
        onRecord(new PumpNow(false, LocalDate.of(2026, 3, 10)));
        assertThat(pumps.refillDates(NURSE)).doesNotContainKey(child);
        assertThat(pumps.current(NURSE, child)).isEmpty();
        assertThat(pumps.history(NURSE, child)).hasSize(1);
        assertThat(pumps.takenOutOn(NURSE, child)).contains(LocalDate.of(2026, 3, 10));
        assertThat(pumps.unfilledSince(NURSE, child)).isEmpty();
        onRecord(new PumpNow(true, LocalDate.of(2026, 3, 3)));
        assertThat(pumps.current(NURSE, child)).isPresent();
        assertThat(pumps.takenOutOn(NURSE, child)).isEmpty();
    }

    private void onRecord(PumpNow pump) {
        when(devices.pumps()).thenReturn(Map.of(child, pump));
        when(devices.pump(child)).thenReturn(Optional.of(pump));
    }

    @Test
    void noDateOfAPumpThatWasReplacedStandsForTheNewOneUntilThatIsFilled() {
        pumps.record(NURSE, child, FILL, 0);
        var since = LocalDate.of(2026, 3, 4);
        onRecord(new PumpNow(true, since));
        assertThat(pumps.current(NURSE, child)).isEmpty();
        assertThat(pumps.refillDates(NURSE)).doesNotContainKey(child);
        assertThat(pumps.unfilledSince(NURSE, child)).contains(since);
        assertThat(pumps.history(NURSE, child)).hasSize(1);

        pumps.record(NURSE, child, new FillData(since, LocalDate.of(2026, 7, 1), 5, ""), 1);
        assertThat(pumps.current(NURSE, child)).isPresent();
        assertThat(pumps.refillDates(NURSE)).containsEntry(child, LocalDate.of(2026, 6, 26));
        assertThat(pumps.unfilledSince(NURSE, child)).isEmpty();
    }

    @Test
    void aPumpOnRecordWithoutAnyFillIsNotForgotten() {
        onRecord(new PumpNow(true, LocalDate.of(2026, 3, 4)));
        assertThat(pumps.unfilledSince(NURSE, child)).contains(LocalDate.of(2026, 3, 4));
    }

    @Test
    void refusesAFillOfADayOnWhichThePumpOnRecordWasNotIn() {
        onRecord(new PumpNow(true, LocalDate.of(2026, 3, 4)));
        assertThatThrownBy(() -> pumps.record(NURSE, child, FILL, 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::field, Problem::key)
                                .containsExactly(tuple("filled", "pump.problem.filled.before-pump")));
        onRecord(new PumpNow(false, LocalDate.of(2026, 3, 2)));
        assertThatThrownBy(() -> pumps.record(NURSE, child, FILL, 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::field, Problem::key)
                                .containsExactly(tuple("filled", "pump.problem.filled.no-pump")));
        assertThat(pumps.history(NURSE, child)).isEmpty();
    }

    @Test
    void hasNoFillBeforeOneIsRecorded() {
        assertThat(pumps.current(NURSE, child)).isEmpty();
        assertThat(pumps.history(NURSE, child)).isEmpty();
        assertThat(pumps.refillDates(NURSE)).doesNotContainKey(child);
    }

    /** Dates of reference table ITB-W3, third row. */
    @Test
    void theNewestFillCountsAndTheOlderStay() {
        pumps.record(NURSE, child, new FillData(LocalDate.of(2026, 1, 15), LocalDate.of(2026, 4, 6), 5, ""), 0);
        pumps.record(NURSE, child, FILL, 1);
        assertThat(pumps.current(NURSE, child).orElseThrow().refillBy().day()).isEqualTo(LocalDate.of(2026, 6, 18));
        assertThat(pumps.current(NURSE, child).orElseThrow().note()).isEqualTo("print-out of the day");
        assertThat(pumps.history(NURSE, child)).extracting(Fill::number).containsExactly(2L, 1L);
        assertThat(pumps.refillDates(NURSE)).containsEntry(child, LocalDate.of(2026, 6, 18));
    }

    @Test
    void tellsTheFamilyTheNewDayInBothLanguages() {
        pumps.record(NURSE, child, FILL, 0);
        assertThat(heard.changes).singleElement().satisfies(change -> {
            assertThat(change.child()).isEqualTo(child);
            assertThat(change.day()).isEqualTo(LocalDate.of(2026, 6, 18));
            assertThat(change.forFamily().orElseThrow().en()).isEqualTo("The pump must be refilled by Thu, Jun 18.");
            assertThat(change.forFamily().orElseThrow().es()).contains("18").doesNotContain("Jun");
        });
    }

    @Test
    void ofTwoWhoRecordAtOnceTheSecondIsToldAndNothingIsLost() {
        pumps.record(NURSE, child, FILL, 0);
        assertThatThrownBy(() -> pumps.record(NURSE, child, FILL, 0)).isInstanceOf(Overtaken.class);
        assertThat(pumps.history(NURSE, child)).hasSize(1);
        assertThat(heard.changes).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-13, 2026-06-23, 5, filled, pump.problem.filled.future",
        "2024-03-11, 2026-06-23, 5, filled, pump.problem.filled.old",
        "2026-03-03, 2026-03-03, 5, alarm, pump.problem.alarm.before",
        "2026-03-03, 2036-03-13, 5, alarm, pump.problem.alarm.far",
        "2026-03-03, 2026-06-23, 2, margin, pump.problem.margin",
        "2026-03-03, 2026-06-23, 15, margin, pump.problem.margin"
    })
    void refusesWhatIsOutOfBounds(LocalDate filled, LocalDate alarm, int margin, String field, String key) {
        var refused = catchThrowableOfType(
                Invalid.class, () -> pumps.record(NURSE, child, new FillData(filled, alarm, margin, ""), 0));
        assertThat(refused.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.field()).isEqualTo(field);
            assertThat(problem.key()).isEqualTo(key);
        });
        for (var language : Language.values()) {
            assertThat(words.say(language, refused.problems().get(0)))
                    .isNotBlank()
                    .doesNotContain("{");
        }
        assertThat(pumps.history(NURSE, child)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2026-03-12, 2026-03-13, 3", "2024-03-12, 2036-03-12, 14"})
    void takesWhatLiesOnTheBound(LocalDate filled, LocalDate alarm, int margin) {
        assertThat(pumps.check(new FillData(filled, alarm, margin, "n".repeat(500))))
                .isNotNull();
    }

    @Test
    void saysAllThatIsWrongAtOnce() {
        var data = new FillData(LocalDate.of(2027, 1, 1), LocalDate.of(2026, 1, 1), 0, "n".repeat(501));
        var refused = catchThrowableOfType(Invalid.class, () -> pumps.check(data));
        assertThat(refused.problems()).extracting(Problem::field).containsExactly("filled", "alarm", "margin", "note");
    }

    @Test
    void refusesAViewerWhoMayNot() {
        gate.deny(Action.RECORD_PUMP, Action.SEE_FOLDER, Action.SEE_FAMILY_PAGES, Action.LIST_CHILDREN);
        assertThatThrownBy(() -> pumps.record(NURSE, child, FILL, 0)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> pumps.current(NURSE, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> pumps.history(NURSE, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> pumps.refillDates(NURSE)).isInstanceOf(NotAvailable.class);
        gate.deny();
        assertThat(pumps.history(NURSE, child)).isEmpty();
    }

    @Test
    void wantsAPersonToAnswerForAFill() {
        assertThatThrownBy(() -> pumps.record(new Viewer.Machine("test"), child, FILL, 0))
                .isInstanceOf(NotAvailable.class);
    }
}
