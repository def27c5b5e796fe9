package org.hearthway.path.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentReading;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.ClinicValues.ChildEffect;
import org.hearthway.path.ClinicValues.PathOfClinic;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.Amount.Gap;
import org.hearthway.path.engine.Amount.Times;
import org.hearthway.path.engine.Fitted;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.ValuePlace.Kind;
import org.hearthway.path.events.PathChanged;
import org.hearthway.path.internal.ValueHistory.Given;
import org.hearthway.path.internal.ValueHistory.Made;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.SettableClock;
import org.hearthway.words.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The clinic's clock stands at Thursday, March 12, 2026, 10:00 in New York. */
@SpringJUnitConfig(ClinicValuesTests.Setting.class)
class ClinicValuesTests {

    @ComponentScan("org.hearthway.path.internal")
    static class Setting extends ChildPlansTests.Setting {}

    private static final Viewer ADMINISTRATOR = new Viewer.Person(
            AccountId.random(), "Admin", Set.of(Role.ADMINISTRATOR), Language.EN, LeanClinic.NEW_YORK);
    private static final Viewer SURGEON =
            new Viewer.Person(AccountId.random(), "Surgeon", Set.of(Role.PHYSICIAN), Language.EN, LeanClinic.NEW_YORK);
    private static final LocalDate BEGIN = LocalDate.of(2025, 10, 6);
    private static final LocalDate SURGERY = LocalDate.of(2026, 3, 2);
    private static final List<String> SIX_WEEKS = List.of(
            "passive-hip-flexion-past-90",
            "passive-trunk-twist",
            "passive-trunk-side-bend",
            "hamstring-stretch:care",
            "riding",
            "contact-sport",
            "electrical-stimulation",
            "standing:care");

    @Autowired
    private ClinicValues values;

    @Autowired
    private Plans plans;

    @Autowired
    private PathKind paths;

    @Autowired
    private ValueRows rows;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private ChildPlansTests.Heard heard;

    @Autowired
    private Words words;

    @Autowired
    private SettableClock clock;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private PlatformTransactionManager transactions;

    @BeforeEach
    void openTheGate() {
        gate.deny();
        clock.set(HearthwayTest.START);
        if (paths.all().isEmpty()) {
            ContentReading.shipped(paths);
        }
    }

    @AfterEach
    void asShipped() {
        jdbc.sql("delete from path_value").update();
        jdbc.sql("delete from path_value_change").update();
        jdbc.sql("delete from path_change").update();
        clock.set(HearthwayTest.START.plus(Duration.ofMinutes(5)));
        plans.pathways();
    }

    private static ValuePlace until(String rule) {
        return new ValuePlace("operation", Kind.PRECAUTION_UNTIL, rule);
    }

    private static ValuePlace check(Kind kind) {
        return new ValuePlace("six-week-check", kind, "operation:START");
    }

    private static Optional<Amount> weeks(int weeks) {
        return Optional.of(new Gap(Period.ofWeeks(weeks)));
    }

    /** The rules of care that the shipped file keeps six weeks end after four, and so does the check that ends them. */
    private static Map<ValuePlace, Optional<Amount>> fourWeeks() {
        var wishes = new LinkedHashMap<ValuePlace, Optional<Amount>>();
        SIX_WEEKS.forEach(rule -> wishes.put(until(rule), weeks(4)));
        wishes.put(check(Kind.BEGINS_EARLIEST), weeks(3));
        wishes.put(check(Kind.BEGINS_USUAL), weeks(4));
        return wishes;
    }

    private void toFourWeeks() {
        values.apply(ADMINISTRATOR, "sdr", fourWeeks(), " our surgeons end them after four weeks ", sdr().version());
    }

    private PathOfClinic sdr() {
        return values.all(ADMINISTRATOR).stream()
                .filter(path -> path.pathway().equals("sdr"))
                .findFirst()
                .orElseThrow();
    }

    private ChildId operated(LocalDate day) {
        var child = ChildId.random();
        plans.begin(SURGEON, child, "sdr", Plans.Beginning.INSTEAD, day.minusMonths(5), "referred by the clinic");
        plans.apply(SURGEON, child, "sdr", new Change.Fix("operation", day), "done as planned", 1);
        heard.changes.clear();
        return child;
    }

    private Plan plan(ChildId child) {
        return plans.plans(SURGEON, child).get(0).plan();
    }

    private LocalDate start(ChildId child, String stage) {
        return plan(child).stage(stage).orElseThrow().start();
    }

    private LocalDate twistUntil(ChildId child) {
        return plan(child).stage("operation").orElseThrow().precautions().stream()
                .filter(care -> care.rule().tag().equals("passive-trunk-twist"))
                .findFirst()
                .orElseThrow()
                .until();
    }

    private String problem(Map<ValuePlace, Optional<Amount>> wishes) {
        var refused = catchThrowableOfType(Invalid.class, () -> values.preview(ADMINISTRATOR, "sdr", wishes));
        assertThat(refused).isNotNull();
        return words.say(Language.EN, refused.problems().get(0));
    }

    /** National (Scotland) SDR guidance: 4 to 6 weeks; the shipped file keeps the longer. */
    @Test
    void fourWeeksInThePlaceOfSixMoveOnlyWhatNobodyDatedAndNothingThatIsBehind() {
        var unpinned = operated(SURGERY);
        var pinned = operated(SURGERY);
        plans.apply(
                SURGEON, pinned, "sdr", new Change.SetByHand("six-week-check", LocalDate.of(2026, 4, 15)), "away", 2);
        var longAgo = operated(LocalDate.of(2024, 3, 4));
        var other = ChildId.random();
        plans.begin(SURGEON, other, "itb", Plans.Beginning.INSTEAD, BEGIN, "another path");
        heard.changes.clear();
        var before = plans.all(SURGEON);

        var preview = values.preview(ADMINISTRATOR, "sdr", fourWeeks());
        assertThat(preview.onPath()).isEqualTo(3);
        assertThat(preview.children()).extracting(ChildEffect::child).containsExactlyInAnyOrder(unpinned, pinned);
        assertThat(preview.children())
                .filteredOn(effect -> effect.child().equals(unpinned))
                .singleElement()
                .satisfies(effect -> {
                    assertThat(effect.moves().get(0))
                            .isEqualTo(new Plans.Move(
                                    "six-week-check",
                                    effect.moves().get(0).name(),
                                    LocalDate.of(2026, 4, 13),
                                    LocalDate.of(2026, 3, 30)));
                    assertThat(effect.cares()).hasSize(SIX_WEEKS.size()).allSatisfy(care -> {
                        assertThat(care.until()).isEqualTo(SURGERY.plusWeeks(6));
                        assertThat(care.newUntil()).isEqualTo(SURGERY.plusWeeks(4));
                    });
                });
        assertThat(plans.all(SURGEON)).isEqualTo(before);
        assertThat(heard.changes).isEmpty();

        toFourWeeks();

        assertThat(start(unpinned, "six-week-check")).isEqualTo(LocalDate.of(2026, 3, 30));
        assertThat(twistUntil(unpinned)).isEqualTo(SURGERY.plusWeeks(4));
        assertThat(start(pinned, "six-week-check")).isEqualTo(LocalDate.of(2026, 4, 15));
        assertThat(plan(other)).isEqualTo(before.get(other).get(0));
        assertThat(heard.changes)
                .extracting(PathChanged::child)
                .containsExactlyInAnyOrder(unpinned, pinned)
                .doesNotContain(longAgo, other);
    }

    @Test
    void oneUndoRestoresEveryPlanAndCanItselfBeTakenBack() {
        var child = operated(SURGERY);
        operated(LocalDate.of(2026, 6, 1));
        var before = plans.all(SURGEON);
        toFourWeeks();
        var after = plans.all(SURGEON);
        assertThat(after).isNotEqualTo(before);
        heard.changes.clear();

        assertThat(values.previewUndo(ADMINISTRATOR, "sdr", 1).children()).hasSize(2);
        values.undo(ADMINISTRATOR, "sdr", 1, "the guidance says six after all", 1);

        assertThat(plans.all(SURGEON)).isEqualTo(before);
        assertThat(heard.changes).extracting(PathChanged::child).contains(child).hasSize(2);
        assertThat(sdr().ownValues()).isZero();
        assertThat(sdr().changes()).extracting(ClinicValues.Change::undone).containsExactly(false, true);
        assertThat(sdr().changes().get(0).lines()).hasSize(fourWeeks().size());

        values.undo(ADMINISTRATOR, "sdr", 2, "four weeks it is", 2);
        assertThat(plans.all(SURGEON)).isEqualTo(after);
        assertThatThrownBy(() -> values.undo(ADMINISTRATOR, "sdr", 2, "once more", 3))
                .isInstanceOf(Invalid.class);
    }

    @Test
    void theReasonForADateNamesTheClinicsOwnRuleAndWhatTheFileSays() {
        var child = operated(SURGERY);
        toFourWeeks();
        var check = plan(child).stage("six-week-check").orElseThrow();
        assertThat(plans.why(plan(child), check).en())
                .isEqualTo("4 weeks after the first day of “Surgery” (Mar 2, 2026)."
                        + " That is our clinic’s own rule since March 12, 2026. The path as it came says 6 weeks.");
        assertThat(plans.why(plan(child), check).es())
                .contains("Es la regla propia de nuestra clínica desde el 12 de marzo de 2026.")
                .contains("dice 6 semanas");
        var review = plan(child).stage("three-month-review").orElseThrow();
        assertThat(plans.why(plan(child), review).en()).doesNotContain("own rule");
        var twist = plan(child)
                .stage("operation")
                .orElseThrow()
                .precautions()
                .get(1)
                .rule();
        assertThat(values.why(twist).orElseThrow().en())
                .isEqualTo("It holds for 4 weeks: the clinic’s own rule since March 12, 2026."
                        + " The path as it came says 6 weeks.");
        assertThat(plan(child).stage("operation").orElseThrow().precautions().stream()
                        .filter(care -> care.rule().tag().equals("pool"))
                        .flatMap(care -> values.why(care.rule()).stream()))
                .isEmpty();
    }

    @Test
    void aGapOfTheChildsOwnIsNotTheClinicsRule() {
        var child = operated(SURGERY);
        toFourWeeks();
        var own = new org.hearthway.path.engine.Template.After(
                Optional.empty(),
                org.hearthway.path.engine.Template.Edge.START,
                Period.ofWeeks(7),
                Optional.of(Period.ofWeeks(8)),
                Optional.of(Period.ofWeeks(9)));
        plans.apply(SURGEON, child, "sdr", new Change.OwnRule("six-week-check", 0, own), "slow to heal", 2);
        var check = plan(child).stage("six-week-check").orElseThrow();
        assertThat(plans.why(plan(child), check).en()).startsWith("8 weeks").doesNotContain("own rule");
    }

    @Test
    void aLengthInFrontIsNamedWhereADateCountsFromItsEnd() {
        var child = operated(LocalDate.of(2026, 3, 20));
        values.apply(
                ADMINISTRATOR,
                "sdr",
                Map.of(new ValuePlace("hospital", Kind.LASTS_USUAL, ""), Optional.of(new Gap(Period.ofDays(14)))),
                "two weeks on our ward",
                0);
        var home = plan(child).stage("home-weeks").orElseThrow();
        assertThat(plans.why(plan(child), home).en())
                .contains("1 day after the last day of “Weeks in the hospital” (Apr 4, 2026).")
                .contains("Weeks in the hospital: Length, usual: 2 weeks. That is our clinic’s own rule"
                        + " since March 12, 2026; the path as it came says 20 days.");
    }

    @Test
    void theFamilyReadsTheNextDateAndTheNextRuleThatChange() {
        operated(SURGERY);
        toFourWeeks();
        assertThat(heard.changes).singleElement().satisfies(change -> {
            assertThat(change.words().en())
                    .startsWith("The clinic changed its own rules for this path."
                            + " “Six-week check” is now on Mon, Mar 30. It was on Mon, Apr 13.")
                    .contains("now holds until Mar 30, 2026. Before, it was until Apr 13, 2026."
                            + " 7 more care rules changed too.");
            assertThat(change.words().es())
                    .startsWith("La clínica cambió sus propias reglas")
                    .contains("hasta el");
        });
    }

    @Test
    void anotherPathOfTheSameChildStaysAsItIs() {
        var child = operated(SURGERY);
        plans.begin(SURGEON, child, "rehab", Plans.Beginning.BESIDE, LocalDate.of(2026, 3, 9), "a block besides");
        heard.changes.clear();
        var before = plans.plans(SURGEON, child).get(1).plan();
        assertThat(values.preview(ADMINISTRATOR, "sdr", fourWeeks()).onPath()).isEqualTo(1);
        toFourWeeks();
        assertThat(plans.plans(SURGEON, child).get(1).plan()).isEqualTo(before);
        assertThat(heard.changes).hasSize(1);
    }

    @Test
    void whatWasBeforeIsToldWithTheValuesOfThen() {
        var child = operated(SURGERY);
        var before = plan(child);
        clock.advance(Duration.ofMinutes(1));
        toFourWeeks();
        assertThat(plans.asDecidedBy(SURGEON, child, HearthwayTest.START)).containsExactly(before);
        assertThat(plans.asDecidedBy(SURGEON, child, clock.instant())).containsExactly(plan(child));
    }

    @Test
    void anEndThatMovesByItselfIsTold() {
        operated(LocalDate.of(2025, 3, 4));
        values.apply(
                ADMINISTRATOR,
                "sdr",
                Map.of(new ValuePlace("growing", Kind.LASTS_USUAL, ""), Optional.of(new Gap(Period.ofYears(9)))),
                "nine years here",
                0);
        assertThat(heard.changes)
                .singleElement()
                .satisfies(change -> assertThat(change.words().en())
                        .isEqualTo("The clinic changed its own rules for this path. “Checks while growing” now ends on"
                                + " Mar 5, 2035. Before, it was to end on Mar 5, 2036."));
    }

    @Test
    void aRhythmOfVisitsIsTheClinicsToo() {
        var child = operated(LocalDate.of(2025, 3, 4));
        var yearly = new ValuePlace("growing", Kind.VISIT_TIMES, "yearly");
        var before = visits(child);
        var wishes = Map.of(yearly, Optional.<Amount>of(new Times(4)));
        assertThat(values.preview(ADMINISTRATOR, "sdr", wishes).children())
                .singleElement()
                .satisfies(effect -> assertThat(effect.visits()).isEqualTo(4));
        values.apply(ADMINISTRATOR, "sdr", wishes, "four years are enough here", 0);
        assertThat(visits(child)).isEqualTo(before - 4);
        assertThat(heard.changes)
                .singleElement()
                .satisfies(
                        change -> assertThat(change.words().en())
                                .endsWith(
                                        "4 visits have other days to choose from now. Visits you already have stay as they are."));
    }

    private long visits(ChildId child) {
        return plan(child).stage("growing").orElseThrow().visits().stream()
                .filter(visit -> visit.kind().equals("review"))
                .count();
    }

    private static ValuePlace task(Kind kind, String words) {
        return new ValuePlace("assessment", kind, words);
    }

    @Test
    void theDayOfATaskIsTheClinicsTooAndOnlyAFamilyWhoseTaskItIsIsTold() {
        var child = ChildId.random();
        plans.begin(SURGEON, child, "sdr", Plans.Beginning.INSTEAD, LocalDate.of(2026, 3, 9), "referred");
        var shoes = task(Kind.FAMILY_TASK_DUE, "Bring shorts, shoes and braces to the walk film.");
        var hips = task(Kind.STAFF_TASK_DUE, "Enter the hip check in the surveillance record");
        var start = start(child, "assessment");
        heard.changes.clear();

        var preview = values.preview(ADMINISTRATOR, "sdr", Map.of(shoes, weeks(2), hips, weeks(3)));
        assertThat(preview.children()).singleElement().satisfies(effect -> {
            assertThat(effect.moves()).isEmpty();
            assertThat(effect.familyTasks())
                    .extracting(Plans.Move::from, Plans.Move::to)
                    .containsExactly(tuple(start.plusWeeks(4), start.plusWeeks(2)));
            assertThat(effect.staffTasks())
                    .extracting(Plans.Move::from, Plans.Move::to)
                    .containsExactly(tuple(start.plusWeeks(5), start.plusWeeks(3)));
        });

        values.apply(ADMINISTRATOR, "sdr", Map.of(hips, weeks(3)), "the radiologist comes earlier", 0);
        assertThat(heard.changes).isEmpty();
        values.apply(ADMINISTRATOR, "sdr", Map.of(shoes, weeks(2)), "the film comes earlier", 1);
        assertThat(heard.changes)
                .singleElement()
                .satisfies(change -> assertThat(change.words().en())
                        .contains("“Bring shorts, shoes and braces to the walk film.” is now due by"));
        var stage = plan(child).stage("assessment").orElseThrow().stage();
        assertThat(stage.duties().family().get(0).due()).contains(Period.ofWeeks(2));
        assertThat(plans.why(plan(child), shoes))
                .hasValueSatisfying(says -> assertThat(says.en())
                        .isEqualTo("That is our clinic’s own rule since March 12, 2026. The path as it came says 4"
                                + " weeks."));
        assertThat(plans.why(plan(child), new ValuePlace("assessment", Kind.LASTS_USUAL, "")))
                .isEmpty();
        values.undo(ADMINISTRATOR, "sdr", 2, "as before", 2);
        assertThat(plan(child)
                        .stage("assessment")
                        .orElseThrow()
                        .stage()
                        .duties()
                        .family()
                        .get(0)
                        .due())
                .contains(Period.ofWeeks(4));
    }

    @Test
    void aTaskIsDueAtMostAYearBeforeItsStage() {
        var shoes = task(Kind.FAMILY_TASK_DUE, "Bring shorts, shoes and braces to the walk film.");
        assertThat(problem(Map.of(shoes, Optional.of(new Gap(Period.ofMonths(-13))))))
                .contains("Task of the family: Bring shorts", "1 year before to 20 years");
        assertThat(values.preview(ADMINISTRATOR, "sdr", Map.of(shoes, Optional.of(new Gap(Period.ofDays(-3)))))
                        .children())
                .isEmpty();
    }

    @Test
    void refusesAUsualGapBelowTheEarliestAndNamesBothAndTheWayOut() {
        assertThat(problem(Map.of(check(Kind.BEGINS_USUAL), weeks(4))))
                .isEqualTo("Six-week check: Begins after the first day of “Surgery”, usual: it must not be shorter than"
                        + " “earliest”, which is 5 weeks. Choose a longer one, or change “earliest” as well.");
        assertThat(problem(Map.of(check(Kind.BEGINS_LATEST), weeks(5)))).contains("“usual”, which is 6 weeks");
        assertThat(problem(Map.of(check(Kind.BEGINS_EARLIEST), weeks(8)))).contains("must not be longer");
    }

    @Test
    void refusesWhatIsNegativeEndlessOrTooOften() {
        assertThat(problem(Map.of(check(Kind.BEGINS_EARLIEST), weeks(-1)))).contains("it may be 0 days to 20 years");
        assertThat(problem(Map.of(until("pool"), Optional.of(new Gap(Period.ofYears(21))))))
                .contains("20 years");
        assertThat(problem(Map.of(until("pool"), weeks(0)))).contains("must not be shorter than “from”");
        var yearly = new ValuePlace("growing", Kind.VISIT_TIMES, "yearly");
        assertThat(problem(Map.of(yearly, Optional.of(new Times(61))))).contains("2 times to 60 times");
        assertThat(problem(Map.of(yearly, weeks(2)))).contains("no such value");
    }

    @Test
    void refusesRulesThatCannotAllBeKeptAndNamesThem() {
        var review = new ValuePlace("six-month-review", Kind.BEGINS_USUAL, "operation:START");
        assertThat(problem(Map.of(
                        review.beside(Kind.BEGINS_EARLIEST),
                        weeks(2),
                        review,
                        weeks(4),
                        review.beside(Kind.BEGINS_LATEST),
                        weeks(10))))
                .startsWith("No day would fit for “")
                .contains("“Six-month check” comes 2 weeks to 10 weeks after the first day of “Surgery”.")
                .contains("“Three-month check” comes 11 weeks to 15 weeks after the first day of “Surgery”.");
    }

    @Test
    void refusesWhatChangesNothingOrHasNoReason() {
        assertThat(problem(Map.of(until("pool"), Optional.empty()))).startsWith("These values count already.");
        for (var reason : List.of("", "  a  ", "r".repeat(501))) {
            var refused = catchThrowableOfType(
                    Invalid.class, () -> values.apply(ADMINISTRATOR, "sdr", fourWeeks(), reason, 0));
            assertThat(refused.problems()).extracting(p -> p.field()).containsExactly("reason");
        }
        assertThat(sdr().version()).isZero();
    }

    @Test
    void ofTwoWhoChangeAtOnceTheSecondIsToldAndNothingIsLost() {
        toFourWeeks();
        var pool = Map.of(until("pool"), weeks(2));
        assertThatThrownBy(() -> values.apply(ADMINISTRATOR, "sdr", pool, "two weeks are enough", 0))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> values.undo(ADMINISTRATOR, "sdr", 1, "seen too early", 0))
                .isInstanceOf(Overtaken.class);
        values.apply(ADMINISTRATOR, "sdr", pool, "two weeks are enough", 1);
        assertThat(sdr().ownValues()).isEqualTo(fourWeeks().size() + 1L);
    }

    @Test
    void whoMayNotManageTheClinicNeitherSeesNorChangesThem() {
        gate.deny(Action.MANAGE_CLINIC);
        assertThatThrownBy(() -> values.all(SURGEON)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> values.preview(SURGEON, "sdr", fourWeeks())).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> values.previewUndo(SURGEON, "sdr", 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> values.apply(SURGEON, "sdr", fourWeeks(), "a reason", 0))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> values.undo(SURGEON, "sdr", 1, "a reason", 0)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void takingBackWhatALaterChangeRestsOnIsRefusedByName() {
        values.apply(ADMINISTRATOR, "sdr", Map.of(check(Kind.BEGINS_EARLIEST), weeks(3)), "earlier", 0);
        values.apply(ADMINISTRATOR, "sdr", Map.of(check(Kind.BEGINS_USUAL), weeks(4)), "usually at four", 1);
        var refused = catchThrowableOfType(
                Invalid.class, () -> values.undo(ADMINISTRATOR, "sdr", 1, "not earlier after all", 2));
        assertThat(words.say(Language.EN, refused.problems().get(0)))
                .isEqualTo("Then these values of the clinic would no longer fit: Six-week check: Begins after the first"
                        + " day of “Surgery”, usual. Change them first, or together with this.");
        values.undo(ADMINISTRATOR, "sdr", 2, "in this order", 2);
        values.undo(ADMINISTRATOR, "sdr", 1, "in this order", 3);
        assertThat(sdr().ownValues()).isZero();
    }

    private void shippedOnceMore(long number, ValuePlace place, Amount shipped, Amount own) {
        var given = new Given(place, shipped, shipped, Optional.of(own));
        rows.add(
                "sdr",
                new Made(number, List.of(given), Optional.empty(), "from before", Optional.empty(), Instant.EPOCH),
                ADMINISTRATOR);
    }

    @Test
    void whatNoLongerFitsANewerFileIsLeftOutAndShownAndStopsNothing() {
        var child = operated(SURGERY);
        var before = plans.all(SURGEON);
        var gone = new ValuePlace("five-week-call", Kind.BEGINS_USUAL, "operation:START");
        // the file said earliest P3W when the clinic said P4W; now it says P5W
        shippedOnceMore(1, gone, new Gap(Period.ofWeeks(5)), new Gap(Period.ofWeeks(4)));
        shippedOnceMore(2, check(Kind.BEGINS_USUAL), new Gap(Period.ofWeeks(6)), new Gap(Period.ofWeeks(4)));
        shippedOnceMore(3, until("pool"), new Gap(Period.ofWeeks(3)), new Gap(Period.ofWeeks(2)));

        assertThat(sdr().leftOut())
                .extracting(ClinicValues.LeftOut::place, ClinicValues.LeftOut::why)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple(gone, Fitted.Why.GONE),
                        org.assertj.core.groups.Tuple.tuple(check(Kind.BEGINS_USUAL), Fitted.Why.CONFLICT));
        assertThat(sdr().ownValues()).isEqualTo(1);
        assertThat(start(child, "six-week-check")).isEqualTo(LocalDate.of(2026, 4, 13));
        assertThat(plan(child).stage("operation"))
                .isNotEqualTo(before.get(child).get(0).stage("operation"));

        var preview = values.preview(ADMINISTRATOR, "sdr", Map.of(check(Kind.BEGINS_EARLIEST), weeks(4)));
        assertThat(preview.again())
                .singleElement()
                .satisfies(name -> assertThat(name.en()).contains("usual"));

        values.apply(
                ADMINISTRATOR,
                "sdr",
                Map.of(gone, Optional.empty(), check(Kind.BEGINS_USUAL), Optional.empty()),
                "as the new file says",
                3);
        assertThat(sdr().leftOut()).isEmpty();
    }

    @Test
    void everyShippedValueKeepsToTheRules() {
        assertThat(paths.all())
                .isNotEmpty()
                .allSatisfy(path -> assertThat(org.hearthway.path.engine.ValueRules.flaws(path))
                        .isEmpty());
        assertThat(values.all(ADMINISTRATOR))
                .allSatisfy(path -> assertThat(path.stages())
                        .flatExtracting(ClinicValues.StageValues::rules)
                        .allSatisfy(rule -> {
                            assertThat(rule.source()).isNotBlank();
                            assertThat(rule.name().es()).isNotBlank();
                            assertThat(rule.values()).isNotEmpty();
                        }));
    }

    @Test
    void aChangeMadeElsewhereCountsWithinSecondsAndNoPlanAsksForIt() {
        var child = operated(SURGERY);
        plans.all(SURGEON);
        jdbc.sql("insert into path_value_change (pathway, number, reason, actor, made_at)"
                        + " values ('sdr', 1, 'elsewhere', 'person:x', current_timestamp)")
                .update();
        jdbc.sql(
                        "insert into path_value (pathway, number, stage, kind, part, before_it, shipped, own)"
                                + " values ('sdr', 1, 'operation', 'PRECAUTION_UNTIL', 'passive-trunk-twist', 'P42D', 'P42D', 'P28D')")
                .update();
        assertThat(twistUntil(child)).isEqualTo(SURGERY.plusWeeks(6));
        clock.set(HearthwayTest.START.plusSeconds(10));
        assertThat(twistUntil(child)).isEqualTo(SURGERY.plusWeeks(4));
    }

    @Test
    void whatWasNotKeptDoesNotCountAndWhoHearsOfItReadsTheNewPlan() {
        var child = operated(SURGERY);
        new TransactionTemplate(transactions).executeWithoutResult(status -> {
            toFourWeeks();
            assertThat(CompletableFuture.supplyAsync(() -> twistUntil(child)).join())
                    .isEqualTo(SURGERY.plusWeeks(6));
            assertThat(twistUntil(child)).isEqualTo(SURGERY.plusWeeks(4));
            status.setRollbackOnly();
        });
        assertThat(twistUntil(child)).isEqualTo(SURGERY.plusWeeks(6));
        assertThat(sdr().version()).isZero();
    }

    @Test
    void aChangeIsKeptWithWhoWhenAndWhy() {
        toFourWeeks();
        var own = sdr().stages().stream()
                .flatMap(stage -> stage.rules().stream())
                .flatMap(rule -> rule.values().stream())
                .filter(value -> value.place().equals(check(Kind.BEGINS_USUAL)))
                .findFirst()
                .orElseThrow();
        assertThat(own.shipped()).isEqualTo(new Gap(Period.ofWeeks(6)));
        assertThat(own.own()).hasValueSatisfying(value -> {
            assertThat(value.amount()).isEqualTo(new Gap(Period.ofWeeks(4)));
            assertThat(value.reason()).isEqualTo("our surgeons end them after four weeks");
            assertThat(value.by()).contains(((Viewer.Person) ADMINISTRATOR).account());
            assertThat(value.at()).isEqualTo(HearthwayTest.START);
        });
    }
}
