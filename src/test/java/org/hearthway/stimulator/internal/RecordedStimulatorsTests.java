package org.hearthway.stimulator.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.hearthway.stimulator.Readings.SERIAL;
import static org.hearthway.stimulator.Readings.again;
import static org.hearthway.stimulator.Readings.on;
import static org.hearthway.stimulator.Readings.side;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
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
import org.hearthway.child.Device;
import org.hearthway.child.Devices;
import org.hearthway.child.SamePerson;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Generator.About;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Reading.Again;
import org.hearthway.stimulator.Reading.Other;
import org.hearthway.stimulator.Reading.Side;
import org.hearthway.stimulator.Readings;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.stimulator.engine.ImpedanceRule.Pair;
import org.hearthway.stimulator.engine.ImpedanceRule.What;
import org.hearthway.stimulator.engine.Window.Source;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026, 10:00 in New York. */
@SpringJUnitConfig(RecordedStimulatorsTests.Setting.class)
class RecordedStimulatorsTests {

    @Import(LeanClinic.class)
    @ComponentScan("org.hearthway.stimulator.internal")
    static class Setting {
        @Bean
        Devices devices() {
            return mock();
        }

        /** The two accounts of one person are one. */
        @Bean
        @Primary
        SamePerson namesakes() {
            return (first, second) -> first.equals(second) || ONE_PERSON.contains(first) && ONE_PERSON.contains(second);
        }
    }

    private static final Viewer.Person NURSE = People.with(Role.NURSE);
    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);
    private static final Viewer.Person NURSE_AGAIN = People.with(Role.PHYSICIAN);
    private static final List<AccountId> ONE_PERSON = List.of(NURSE.account(), NURSE_AGAIN.account());
    private static final LocalDate IMPLANTED = LocalDate.of(2025, 9, 1);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate READ = LocalDate.of(2026, 3, 3);

    @Autowired
    private Stimulators stimulators;

    @Autowired
    private Devices devices;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private Words words;

    private final ChildId child = ChildId.random();

    @BeforeEach
    void aChildWithAGenerator() {
        jdbc.sql("insert into child (id, version, entered_at) values (?, 1, ?)")
                .params(child.value(), OffsetDateTime.parse("2025-01-02T10:00Z"))
                .update();
        gate.deny();
        inTheBody(generator(SERIAL, IMPLANTED));
    }

    private void inTheBody(Device.Part... parts) {
        when(devices.of(any(), eq(child)))
                .thenReturn(List.of(new Device(UUID.randomUUID(), Device.Kind.STIMULATOR, List.of(parts), 1)));
        when(devices.generators())
                .thenReturn(Map.of(
                        child, List.of(parts).stream().filter(Device.Part::isIn).toList()));
    }

    private static Device.Part generator(String serial, LocalDate implanted) {
        return new Device.Part(Device.What.GENERATOR, serial, implanted, Optional.empty());
    }

    private Generator generator() {
        return stimulators.record(NURSE, child).generators().get(0);
    }

    private long seen() {
        return stimulators.record(NURSE, child).seen();
    }

    private Reading enter(Readings reading) {
        return stimulators.enter(NURSE, child, reading.data(), seen());
    }

    private void enterAndConfirm(Readings reading) {
        var entered = enter(reading);
        stimulators.confirm(PHYSICIAN, child, again(entered.data()), entered.revision());
    }

    private List<Problem> refusal(Runnable act) {
        var refused = catchThrowableOfType(Invalid.class, act::run).problems();
        for (var language : Language.values()) {
            refused.forEach(problem ->
                    assertThat(words.say(language, problem)).isNotBlank().doesNotContain("{"));
        }
        return refused;
    }

    private List<String> fieldsRefused(Readings reading) {
        return refusal(() -> enter(reading)).stream().map(Problem::field).toList();
    }

    @Test
    void bringsAReadingBackAsItWasTyped() {
        var typed = on(READ, "88.5")
                .estimating(LocalDate.of(2028, 2, 1))
                .set(side(Side.RIGHT, "2.75"))
                .data();
        stimulators.enter(NURSE, child, typed, 0);
        var found = generator().newest().orElseThrow();
        assertThat(found.data())
                .usingRecursiveComparison()
                .withComparatorForType(BigDecimal::compareTo, BigDecimal.class)
                .isEqualTo(typed);
        assertThat(found.check()).isEmpty();
        assertThat(found.by()).isEqualTo(NURSE.account());
    }

    @Test
    void countsForTheFamilyOnlyOnceASecondPersonHasTypedTheSame() {
        var estimate = LocalDate.of(2026, 8, 1);
        var entered = enter(on(READ, "60").estimating(estimate));
        var family = stimulators.outlook(NURSE, child).get(0);
        assertThat(family.from()).isEmpty();
        assertThat(family.lastChecked()).isEmpty();
        assertThat(generator().window().opens().orElseThrow().day()).isEqualTo(estimate);

        stimulators.confirm(PHYSICIAN, child, again(entered.data()), entered.revision());
        family = stimulators.outlook(NURSE, child).get(0);
        assertThat(family.from()).contains(estimate);
        assertThat(family.by()).contains(estimate);
        assertThat(family.lastChecked()).contains(READ);
    }

    /** An unchecked reading may frighten the team a day too early; it may not calm it. */
    @Test
    void ofCheckedAndUncheckedReadingsTheEarlierDayMattersToTheTeam() {
        enterAndConfirm(on(READ, "60").estimating(LocalDate.of(2026, 8, 1)));
        enter(on(READ.plusDays(1), "60").estimating(LocalDate.of(2027, 8, 1)));
        assertThat(generator().window().opens().orElseThrow().day()).isEqualTo(LocalDate.of(2026, 8, 1));
        enter(on(READ.plusDays(2), "60").estimating(LocalDate.of(2026, 5, 1)));
        assertThat(generator().window().opens().orElseThrow().day()).isEqualTo(LocalDate.of(2026, 5, 1));
        assertThat(generator().counted().opens().orElseThrow().day()).isEqualTo(LocalDate.of(2026, 8, 1));
    }

    @Test
    void namesTheFigureThatDiffersAndNeverTheFirstOne() {
        var entered = enter(on(READ, "88").charged(7, READ.minusDays(2)));
        var data = entered.data();
        var left = side(Side.LEFT, "2.5");
        var wrong = new Again(
                Optional.of(new BigDecimal("87")),
                BatteryUnit.PERCENT,
                Optional.of(8),
                List.of(
                        new Reading.Setting(Side.LEFT, "", left.amplitude(), left.unit(), 60, BigDecimal.valueOf(125)),
                        side(Side.RIGHT, "2.6")));
        var problems = refusal(() -> stimulators.confirm(PHYSICIAN, child, wrong, entered.revision()));
        assertThat(problems)
                .extracting(Problem::field)
                .containsExactly("level", "chargeEveryDays", "left-pulse", "left-rate", "right-amplitude");
        assertThat(problems).allSatisfy(problem -> {
            assertThat(problem.key()).isEqualTo("stimulator.problem.differs");
            assertThat(words.say(Language.EN, problem)).doesNotContainPattern("\\d");
        });
        var oneSide = new Again(data.level(), data.unit(), data.chargeEveryDays(), List.of(side(Side.LEFT, "2.5")));
        assertThat(refusal(() -> stimulators.confirm(PHYSICIAN, child, oneSide, entered.revision())))
                .extracting(Problem::field)
                .containsExactly("right-amplitude");
        assertThat(generator().newest().orElseThrow().check()).isEmpty();
    }

    @Test
    void twoAndAHalfIsTwoPointFiveZero() {
        var entered = enter(on(READ, "88").set(side(Side.LEFT, "2.5")));
        var same = new Again(
                Optional.of(new BigDecimal("88.0")),
                BatteryUnit.PERCENT,
                Optional.empty(),
                List.of(side(Side.LEFT, "2.50")));
        stimulators.confirm(PHYSICIAN, child, same, entered.revision());
        assertThat(generator().newestChecked()).isPresent();
    }

    @Test
    void nobodyIsTheirOwnSecondAlsoUnderAnotherAccount() {
        var entered = enter(on(READ, "88"));
        for (var self : List.of(NURSE, NURSE_AGAIN)) {
            assertThat(refusal(() -> stimulators.confirm(self, child, again(entered.data()), entered.revision())))
                    .extracting(Problem::key)
                    .containsExactly("stimulator.problem.same-person");
        }
    }

    @Test
    void ofTwoWhoConfirmAtOnceOneWins() throws Exception {
        var entered = enter(on(READ, "88"));
        var both = new CyclicBarrier(2);
        Callable<Boolean> confirm = () -> {
            both.await();
            try {
                stimulators.confirm(People.with(Role.PHYSICIAN), child, again(entered.data()), entered.revision());
                return true;
            } catch (Overtaken second) {
                return false;
            }
        };
        var pool = Executors.newFixedThreadPool(2);
        try {
            var won = new ArrayList<Boolean>();
            for (var done : pool.invokeAll(Collections.nCopies(2, confirm))) {
                won.add(done.get());
            }
            assertThat(won).containsExactlyInAnyOrder(true, false);
        } finally {
            pool.shutdownNow();
        }
        assertThat(generator().newestChecked()).isPresent();
    }

    @Test
    void ofTwoWhoRecordAtOnceTheSecondIsToldAndNothingIsLost() {
        enter(on(READ, "88"));
        assertThatThrownBy(
                        () -> stimulators.enter(PHYSICIAN, child, on(READ, "88").data(), 0))
                .isInstanceOf(Overtaken.class);
        assertThat(generator().readings()).hasSize(1);
    }

    @Test
    void aCorrectionStandsBesideWhatWasSaidAndWaitsForItsOwnCheck() {
        var entered = enter(on(READ, "88"));
        stimulators.confirm(PHYSICIAN, child, again(entered.data()), entered.revision());
        stimulators.correct(
                NURSE, child, entered.number(), Optional.of(on(READ, "68").data()), " misread ", seen());
        assertThat(generator().readings()).singleElement().satisfies(reading -> {
            assertThat(reading.data().level().orElseThrow()).isEqualByComparingTo("68");
            assertThat(reading.reason()).isEqualTo("misread");
            assertThat(reading.check()).isEmpty();
        });
        assertThatThrownBy(() -> stimulators.confirm(
                        People.with(Role.PHYSICIAN), child, again(entered.data()), entered.revision()))
                .isInstanceOf(Overtaken.class);
        assertThat(stimulators.revisions(NURSE, child))
                .extracting(Stimulators.Revision::counts)
                .containsExactly(true, false);
    }

    @Test
    void aReadingThatNeverWasIsTakenBackWithAReason() {
        var entered = enter(on(READ, "88"));
        assertThat(refusal(() -> stimulators.correct(NURSE, child, entered.number(), Optional.empty(), " x ", seen())))
                .extracting(Problem::field)
                .containsExactly("reason");
        stimulators.correct(NURSE, child, entered.number(), Optional.empty(), "another child’s", seen());
        assertThat(generator().readings()).isEmpty();
        assertThat(stimulators.revisions(NURSE, child)).hasSize(2);
    }

    @Test
    void refusesAReadingOfTheFutureAndOneBeforeTheImplant() {
        assertThat(fieldsRefused(on(TODAY, "88").at(TODAY.atTime(10, 1)))).containsExactly("taken");
        assertThat(fieldsRefused(on(IMPLANTED.minusDays(1), "88"))).containsExactly("taken");
        enter(on(IMPLANTED, "88"));
        enter(on(TODAY, "88").at(TODAY.atTime(10, 0)));
        assertThat(generator().readings()).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({"100.1, PERCENT", "-1, PERCENT", "2.95, PERCENT", "100, VOLT", "0.3, VOLT", "2.9555, VOLT"})
    void refusesABatteryThatNoDeviceShows(String level, BatteryUnit unit) {
        assertThat(fieldsRefused(on(READ, level).showing(unit, Optional.empty(), List.of(), List.of(), "")))
                .containsExactly("level");
    }

    /** A point that slips by two places: 2.5 mA as 250, and as 0.025. */
    @ParameterizedTest
    @CsvSource({"250", "0.025", "0", "-2.5", "25.6"})
    void refusesAStrengthOutOfItsRange(String amplitude) {
        assertThat(fieldsRefused(on(READ, "88").set(side(Side.LEFT, amplitude))))
                .containsExactly("left-amplitude");
    }

    @Test
    void refusesPulseWidthsAndRatesOutOfTheirRange() {
        var left = side(Side.LEFT, "2.5");
        var slipped = new Reading.Setting(Side.LEFT, "", left.amplitude(), left.unit(), 9000, new BigDecimal("13000"));
        assertThat(fieldsRefused(on(READ, "88").set(slipped))).containsExactly("left-pulse", "left-rate");
    }

    @ParameterizedTest
    @CsvSource({"-1180", "0", "100000"})
    void refusesImpedancesThatCannotBe(int ohms) {
        var reading = on(READ, "88")
                .showing(BatteryUnit.PERCENT, Optional.empty(), List.of(new Pair("C-1", ohms)), List.of(), "");
        assertThat(fieldsRefused(reading)).containsExactly("impedances");
    }

    @Test
    void refusesAPairOfContactsTwiceAndMoreLinesThanItHolds() {
        var twice = List.of(new Pair("C-1", 1100), new Pair("c-1", 1200));
        assertThat(fieldsRefused(on(READ, "88").showing(BatteryUnit.PERCENT, Optional.empty(), twice, List.of(), "")))
                .containsExactly("impedances");
        var many =
                IntStream.range(0, 33).mapToObj(i -> new Pair("C-" + i, 1000)).toList();
        var others = Collections.nCopies(13, new Other("group", "B", ""));
        assertThat(fieldsRefused(on(READ, "88")
                        .showing(
                                BatteryUnit.PERCENT,
                                Optional.of(LocalDate.of(2057, 1, 1)),
                                many,
                                others,
                                "n".repeat(501))))
                .containsExactly("estimate", "impedances", "others", "note");
    }

    @Test
    void inAnEmergencyWhatIsMissingOrUnusualIsTakenAndMarked() {
        inTheBody();
        var urgent =
                on(READ, "88").of("").withoutLevel().set(side(Side.LEFT, "250")).inAnEmergency();
        enter(on(READ, "88").of("").inAnEmergency());
        var entered = stimulators.enter(NURSE, child, urgent.data(), 0);
        assertThat(entered.unusual()).containsExactlyInAnyOrder("generator", "left-amplitude");
        assertThat(stimulators.record(NURSE, child).elsewhere()).hasSize(2).allSatisfy(reading -> {
            assertThat(reading.data().emergency()).isTrue();
            assertThat(reading.check()).isEmpty();
        });
        stimulators.confirm(PHYSICIAN, child, again(entered.data()), entered.revision());
    }

    /** What cannot be is no truer in an emergency. */
    @Test
    void inAnEmergencyWhatCannotBeIsRefusedAllTheSame() {
        assertThat(fieldsRefused(on(TODAY.plusDays(1), "101").inAnEmergency())).containsExactly("taken", "level");
    }

    @Test
    void aNewGeneratorBeginsItsOwnCourse() {
        enterAndConfirm(on(READ, "12"));
        inTheBody(
                new Device.Part(Device.What.GENERATOR, SERIAL, IMPLANTED, Optional.of(READ.plusDays(2))),
                generator("SG-20001", READ.plusDays(2)));
        assertThat(generator().readings()).isEmpty();
        assertThat(generator().window().opens().orElseThrow().source()).isEqualTo(Source.AGE);
        var old = stimulators.record(NURSE, child).elsewhere().get(0);
        stimulators.correct(
                NURSE, child, old.number(), Optional.of(on(READ, "13").data()), "misread", seen());
        assertThat(fieldsRefused(on(READ.plusDays(3), "99"))).containsExactly("generator");
    }

    @Test
    void warnsOfASuddenFallAndOfImpedancesBeforeAnybodyConfirmed() {
        enter(on(IMPLANTED, "100"));
        enter(on(IMPLANTED.plusDays(60), "99"));
        enter(on(IMPLANTED.plusDays(120), "98"));
        assertThat(generator().drop()).isEmpty();
        enter(on(IMPLANTED.plusDays(180), "70")
                .showing(
                        BatteryUnit.PERCENT,
                        Optional.empty(),
                        List.of(new Pair("C-1", 9000), new Pair("C-2", 1240)),
                        List.of(),
                        ""));
        assertThat(generator().drop().orElseThrow().fall()).isEqualByComparingTo("28");
        assertThat(generator().unusual())
                .singleElement()
                .satisfies(unusual -> assertThat(unusual.what()).isEqualTo(What.HIGH));
    }

    @Test
    void ofAChargedGeneratorNoFallIsSuddenButALateChargeIsNamed() {
        stimulators.describe(NURSE, child, SERIAL, new About(Charge.AT_HOME, Optional.of(9), Optional.empty(), 0));
        enter(on(IMPLANTED, "100").charged(7, IMPLANTED));
        enter(on(IMPLANTED.plusDays(60), "90").charged(7, IMPLANTED.plusDays(58)));
        assertThat(generator().chargeLate()).isZero();
        enter(on(IMPLANTED.plusDays(120), "20").charged(7, IMPLANTED.plusDays(110)));
        assertThat(generator().drop()).isEmpty();
        assertThat(generator().chargeLate()).isEqualTo(3);
        assertThat(generator().window().opens().orElseThrow().source()).isEqualTo(Source.LIFE);
    }

    @Test
    void aGeneratorThatIsNotChargedHasNoRhythmOfCharging() {
        stimulators.describe(NURSE, child, SERIAL, new About(Charge.NEVER, Optional.empty(), Optional.empty(), 0));
        assertThat(fieldsRefused(on(READ, "88").charged(7, READ))).containsExactly("chargeEveryDays", "lastCharge");
    }

    @Test
    void refusesAChargeAfterTheReadingAndARhythmOutOfBounds() {
        assertThat(fieldsRefused(on(READ, "88").charged(32, READ.plusDays(1))))
                .containsExactly("chargeEveryDays", "lastCharge");
    }

    @Test
    void whatKindAGeneratorIsHasVersionsAndBounds() {
        var wrong = new About(Charge.AT_HOME, Optional.of(31), Optional.of(new BigDecimal("28")), 0);
        assertThat(refusal(() -> stimulators.describe(NURSE, child, SERIAL, wrong)))
                .extracting(Problem::field)
                .containsExactly("lifeYears", "endVolts");
        var plain = new About(Charge.NEVER, Optional.empty(), Optional.of(new BigDecimal("2.6")), 0);
        stimulators.describe(NURSE, child, SERIAL, plain);
        assertThatThrownBy(() -> stimulators.describe(PHYSICIAN, child, SERIAL, plain))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> stimulators.describe(NURSE, child, "SG-0", plain))
                .isInstanceOf(NotAvailable.class);
        assertThat(generator().about().version()).isEqualTo(1);
    }

    @Test
    void tellsTheWindowWhileItIsTypedAndSavesNothing() {
        var falling = List.of("100", "80", "60");
        for (var i = 0; i < falling.size(); i++) {
            enter(on(IMPLANTED.plusDays(60L * i), falling.get(i)));
        }
        var tried = on(IMPLANTED.plusDays(180), "40").data();
        assertThat(stimulators
                        .check(NURSE, child, tried, 0)
                        .opens()
                        .orElseThrow()
                        .source())
                .isEqualTo(Source.FIT);
        assertThat(generator().readings()).hasSize(3);
        // instead of the third there are only three again
        assertThat(stimulators
                        .check(NURSE, child, tried, 3)
                        .opens()
                        .orElseThrow()
                        .source())
                .isEqualTo(Source.AGE);
    }

    @Test
    void tellsTheDaysOfEveryChildWithAGenerator() {
        assertThat(stimulators.due(NURSE).get(child)).singleElement().satisfies(due -> {
            assertThat(due.nextReading()).contains(IMPLANTED.plusMonths(13));
            assertThat(due.replaceFrom()).isEmpty();
        });
        enter(on(READ, "60").estimating(LocalDate.of(2026, 8, 1)));
        assertThat(stimulators.due(NURSE).get(child).get(0).replaceFrom()).contains(LocalDate.of(2026, 8, 1));
    }

    @Test
    void askTheGate() {
        var data = on(READ, "88").data();
        gate.deny(Action.RECORD_STIMULATOR);
        assertThatThrownBy(() -> stimulators.enter(NURSE, child, data, 0)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> stimulators.correct(NURSE, child, 1, Optional.empty(), "why", 0))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> stimulators.confirm(NURSE, child, again(data), 1))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> stimulators.describe(NURSE, child, SERIAL, About.NOTHING))
                .isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_FOLDER, Action.SEE_FAMILY_PAGES, Action.LIST_CHILDREN);
        assertThatThrownBy(() -> stimulators.record(NURSE, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> stimulators.revisions(NURSE, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> stimulators.check(NURSE, child, data, 0)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> stimulators.outlook(NURSE, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> stimulators.due(NURSE)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void wantsAPersonToAnswerForAReading() {
        assertThatThrownBy(() -> stimulators.enter(
                        new Viewer.Machine("test"), child, on(READ, "88").data(), 0))
                .isInstanceOf(NotAvailable.class);
    }
}
