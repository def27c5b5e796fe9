package org.hearthway.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.desk.DeskSamples.CHILD;
import static org.hearthway.desk.DeskSamples.TODAY;
import static org.hearthway.desk.DeskSamples.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.desk.Composer.Gap;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Plan;
import org.hearthway.pump.Refill;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.testing.PlanSamples;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.Answer;
import org.hearthway.visit.Visit.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapsTests {

    private static final LocalDate BY = LocalDate.of(2026, 3, 24);

    private static List<Gap> refill(Visit... visits) {
        return new Gaps(TODAY, 60, "refill")
                .of(CHILD, List.of(), Optional.of(refillBy(BY)), List.of(visits))
                .toList();
    }

    /** A window of seven days. */
    private static Refill refillBy(LocalDate by) {
        return new Refill(
                by.minusDays(90),
                Optional.of(RefillWindow.of(
                        by.minusDays(90),
                        Optional.empty(),
                        Optional.of(by.plusDays(5)),
                        Optional.empty(),
                        new RefillRules(5, 7, 180, 10, 1),
                        open -> true)),
                false);
    }

    @Test
    void aRefillThatIsBeingCheckedAsksForNoVisitAndIsTold() {
        var filled = new Refill(TODAY, Optional.empty(), true);
        assertThat(new Gaps(TODAY, 60, "refill").of(CHILD, List.of(), Optional.of(filled), List.of()))
                .singleElement()
                .satisfies(gap -> assertThat(gap.beingChecked()).isTrue());
    }

    private static Visit refillOn(LocalDate day, State state) {
        return visit("r", "refill", day.atTime(9, 0), Optional.empty(), Answer.NONE, state);
    }

    @Test
    void aRefillWithoutAVisitIsToBookInItsWindow() {
        assertThat(refill()).singleElement().satisfies(gap -> {
            assertThat(gap.wanted().from()).isEqualTo(BY.minusDays(7));
            assertThat(gap.wanted().until()).isEqualTo(BY);
            assertThat(gap.misplaced()).isEmpty();
        });
    }

    @ParameterizedTest
    @CsvSource({"2026-03-13", "2026-03-24"})
    void aRefillVisitUpToTheDateKeepsIt(LocalDate day) {
        assertThat(refill(refillOn(day, State.BOOKED))).isEmpty();
    }

    @Test
    void aRefillVisitAfterTheDateIsSaidToMissIt() {
        assertThat(refill(refillOn(BY.plusDays(1), State.BOOKED)))
                .singleElement()
                .satisfies(gap -> assertThat(gap.misplaced()).isPresent());
    }

    @Test
    void anEarlierRefillDoesNotAnswerForTheNext() {
        assertThat(refill(refillOn(TODAY.minusDays(90), State.ATTENDED))).hasSize(1);
    }

    @Test
    void aCancelledRefillDoesNotCount() {
        assertThat(refill(refillOn(BY, State.CANCELLED))).hasSize(1);
    }

    @Test
    void theVisitAtWhichItWasFilledDoesNotAnswerForTheNextTime() {
        var next = Optional.of(refillBy(TODAY.plusDays(90)));
        var today = visit("r", "refill", TODAY.atTime(11, 0), Optional.empty(), Answer.NONE, State.BOOKED);
        assertThat(next.get().filled()).isEqualTo(TODAY);
        assertThat(new Gaps(TODAY, 120, "refill").of(CHILD, List.of(), next, List.of(today)))
                .singleElement()
                .satisfies(gap -> assertThat(gap.misplaced()).isEmpty());
    }

    @Test
    void aRefillFarAheadIsNotShownYet() {
        var gaps = new Gaps(TODAY, 60, "refill");
        assertThat(gaps.of(CHILD, List.of(), Optional.of(refillBy(TODAY.plusDays(67))), List.of()))
                .hasSize(1);
        assertThat(gaps.of(CHILD, List.of(), Optional.of(refillBy(TODAY.plusDays(68))), List.of()))
                .isEmpty();
    }

    private static List<Gap> due(LocalDate by, Visit... visits) {
        return due(List.of(), by, visits);
    }

    private static List<Gap> due(List<Plan> plans, LocalDate by, Visit... visits) {
        var check = new Gaps.Check("check/HIPS", "check", by, 28);
        return new Gaps(TODAY, 60, "refill")
                .of(CHILD, plans, Optional.empty(), List.of(check), List.of(visits))
                .toList();
    }

    @Test
    void aCheckOfHipsOrSpineIsToBookUntilAVisitKeepsIt() {
        var by = TODAY.plusDays(20);
        assertThat(due(by)).singleElement().satisfies(gap -> {
            assertThat(gap.wanted().from()).isEqualTo(by.minusDays(28));
            assertThat(gap.wanted().until()).isEqualTo(by);
        });
        assertThat(due(by, check(48, State.BOOKED))).isEmpty();
        assertThat(due(by, check(49, State.BOOKED)))
                .singleElement()
                .satisfies(gap -> assertThat(gap.misplaced()).isPresent());
        assertThat(due(by, check(10, State.CANCELLED))).hasSize(1);
        assertThat(due(TODAY.plusDays(89))).as("far ahead").isEmpty();
    }

    @Test
    void aLateCheckIsKeptByAVisitSoon() {
        var by = TODAY.minusDays(100);
        assertThat(due(by)).hasSize(1);
        assertThat(due(by, check(-3, State.ATTENDED)))
                .as("its record is missing")
                .hasSize(1);
        assertThat(due(by, check(28, State.BOOKED))).isEmpty();
    }

    private static List<Gap> cast(LocalDate day, Visit... visits) {
        var check = new Gaps.Check("cast/x", "check", day, 3, Optional.of(day.minusDays(3)));
        return new Gaps(TODAY, 60, "refill")
                .of(
                        CHILD,
                        List.of(plan(Plan.State.NOW, window("a", 40, 50))),
                        Optional.empty(),
                        List.of(check),
                        List.of(visits))
                .filter(gap -> gap.wanted().purpose().startsWith("cast/"))
                .toList();
    }

    @Test
    void aCastIsToBeChangedAtAVisitOfItsOwn() {
        var day = TODAY.plusDays(5);
        assertThat(cast(day)).singleElement().satisfies(gap -> {
            assertThat(gap.wanted().from()).isEqualTo(day.minusDays(3));
            assertThat(gap.wanted().until()).isEqualTo(day);
            assertThat(gap.wanted().isToBeConfirmed()).isFalse();
        });
        assertThat(cast(day, check(8, State.BOOKED))).isEmpty();
        assertThat(cast(day, check(9, State.BOOKED))).as("too late").hasSize(1);
        assertThat(cast(TODAY.minusDays(1), check(-2, State.ATTENDED)))
                .as("it took place; its record is to come")
                .isEmpty();
        assertThat(cast(TODAY.minusDays(1), check(-8, State.ATTENDED)))
                .as("that was the one before")
                .hasSize(1);
    }

    @Test
    void oneVisitIsNotAskedForTwice() {
        assertThat(due(List.of(plan(Plan.State.NOW, window("a", 5, 9))), TODAY.plusDays(6)))
                .singleElement()
                .satisfies(gap -> assertThat(gap.wanted().purpose()).isEqualTo("path/stage/a"));
    }

    private static final LocalDate BEGUN = TODAY.minusYears(2);

    /** A plan with one stage that began two years ago, with these visits. */
    private static Plan plan(Plan.State state, Plan.VisitWindow... windows) {
        var stage = PlanSamples.stage("stage", Bilingual.same("stage"));
        return PlanSamples.plan("path", stage, state, TODAY, BEGUN, BEGUN.plusYears(9), windows);
    }

    private static Plan.VisitWindow window(String visit, int from, int until) {
        return new Plan.VisitWindow(
                "path/stage/" + visit,
                "check",
                TODAY.plusDays(from),
                TODAY.plusDays(until),
                Optional.of(TODAY.plusDays(from)));
    }

    private static List<Gap> asked(Plan plan, Visit... visits) {
        return new Gaps(TODAY, 60, "refill")
                .of(CHILD, List.of(plan), Optional.empty(), List.of(visits))
                .toList();
    }

    private static Visit check(int day, State state) {
        var start = TODAY.plusDays(day).atTime(9, 0);
        return visit("c", "check", start, Optional.of("path/stage/a"), Answer.NONE, state);
    }

    @ParameterizedTest
    @CsvSource({"60,70,1", "61,70,0", "-5,3,1", "-20,-10,1"})
    void aVisitOfThePlanIsShownOnceItsWindowIsNear(int from, int until, int gaps) {
        assertThat(asked(plan(Plan.State.NOW, window("a", from, until)))).hasSize(gaps);
    }

    @Test
    void whatAPastStageMissedIsNoLongerAskedFor() {
        assertThat(asked(plan(Plan.State.PAST, window("a", -20, -10)))).isEmpty();
        assertThat(asked(plan(Plan.State.PAST, window("a", -20, 0)))).hasSize(1);
    }

    @Test
    void aVisitWithinItsWindowAnswersIt() {
        var plan = plan(Plan.State.NOW, window("a", 5, 9));
        assertThat(asked(plan, check(5, State.BOOKED))).isEmpty();
        assertThat(asked(plan, check(9, State.BOOKED))).isEmpty();
        assertThat(asked(plan, check(4, State.ATTENDED))).as("it took place").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"4", "10"})
    void aVisitOutsideItsWindowIsShownWithIt(int day) {
        assertThat(asked(plan(Plan.State.NOW, window("a", 5, 9)), check(day, State.BOOKED)))
                .singleElement()
                .satisfies(gap -> assertThat(gap.misplaced()).isPresent());
    }

    @Test
    void aPathThatIsOverAsksForNothing() {
        var going = plan(Plan.State.NOW, window("a", -5, 9));
        var over = new Plan(
                going.template(),
                going.today(),
                going.stages(),
                Optional.of(new Plan.Over(TODAY.minusDays(1), Optional.empty())));
        assertThat(asked(going)).hasSize(1);
        assertThat(asked(over)).isEmpty();
    }

    @Test
    void aStageWithoutADayAsksForNothing() {
        var going = plan(Plan.State.NOW, window("a", -5, 9));
        var stage = going.stages().get(0);
        var without = new Plan.Planned(
                stage.stage(),
                1,
                stage.state(),
                stage.said(),
                stage.earliest(),
                stage.start(),
                stage.latest(),
                stage.end(),
                stage.possible(),
                stage.why(),
                stage.visits(),
                stage.precautions(),
                Optional.of(new Clash(stage.stage(), List.of(), List.of())));
        assertThat(asked(new Plan(going.template(), going.today(), List.of(without), Optional.empty())))
                .isEmpty();
    }

    @Test
    void aMissedVisitThatComesAgainIsAskedForOnce() {
        var plan = plan(Plan.State.NOW, window("a", -400, -380), window("a/2", -40, -20), window("a/3", 30, 50));
        assertThat(asked(plan))
                .extracting(gap -> gap.wanted().purpose())
                .containsExactly("path/stage/a/2", "path/stage/a/3");
    }
}
