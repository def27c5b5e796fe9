package org.hearthway.path.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.path.engine.Paths.EVERY_DAY;
import static org.hearthway.path.engine.Paths.WEEKDAYS;
import static org.hearthway.path.engine.Paths.after;
import static org.hearthway.path.engine.Paths.begins;
import static org.hearthway.path.engine.Paths.begun;
import static org.hearthway.path.engine.Paths.day;
import static org.hearthway.path.engine.Paths.path;
import static org.hearthway.path.engine.Paths.stage;
import static org.hearthway.path.engine.Paths.start;
import static org.hearthway.path.engine.Paths.with;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.path.engine.Plan.VisitWindow;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.network.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannerTests {

    private static final LocalDate TODAY = day("2026-03-12");

    /** Calendar after surgery on 2026-02-10: reference table SDR-W1, computed with java.time and by script. */
    @ParameterizedTest
    @CsvSource({
        "P3D, 2026-02-13",
        "P5D, 2026-02-15",
        "P2W, 2026-02-24",
        "P3W, 2026-03-03",
        "P4W, 2026-03-10",
        "P6W, 2026-03-24",
        "P3M, 2026-05-10",
        "P6M, 2026-08-10",
        "P1Y, 2027-02-10",
        "P2Y, 2028-02-10"
    })
    void countsFromTheDayOfSurgery(String gap, String expected) {
        var plan = Paths.plan(
                path(stage("surgery", begins()), stage("next", after("surgery", gap))),
                begun("2026-02-10"),
                EVERY_DAY,
                TODAY);
        assertThat(start(plan, "next")).isEqualTo(day(expected));
    }

    /** Month ends: reference table SDR-W1, "always add from the anchor date". */
    @Test
    void clampsAtTheEndOfAMonthAndNeverChains() {
        var template = path(
                stage("surgery", begins()),
                stage("half", after("surgery", "P6M")),
                stage("whole", after("surgery", "P12M")));
        var summer = Paths.plan(template, begun("2026-08-31"), EVERY_DAY, TODAY);
        assertThat(start(summer, "half")).isEqualTo(day("2027-02-28"));
        var yearBefore = Paths.plan(template, begun("2025-08-31"), EVERY_DAY, TODAY);
        assertThat(start(yearBefore, "half")).isEqualTo(day("2026-02-28"));
        assertThat(start(yearBefore, "whole")).isEqualTo(day("2026-08-31")).isNotEqualTo(day("2026-08-28"));
    }

    @Test
    void countsFromTheLastDayOfAStage() {
        var plan = Paths.plan(
                path(
                        stage("hospital", begins(), Period.ofWeeks(3), Optional.empty(), false, false),
                        stage("home", after("hospital", Edge.END, "P1D", "P1D", "P1D"))),
                begun("2026-02-10"),
                EVERY_DAY,
                TODAY);
        assertThat(plan.stage("hospital").orElseThrow().end()).isEqualTo(day("2026-03-03"));
        assertThat(start(plan, "home")).isEqualTo(day("2026-03-04"));
    }

    @Test
    void movesToTheNearestOpenDayAndSaysFromWhich() {
        // 2026-03-28 is a Saturday
        var sunday = planned(after("surgery", Edge.START, "P1W", "P2W", "P3W"), "2026-03-15");
        assertThat(sunday.start()).isEqualTo(day("2026-03-30"));
        assertThat(sunday.why().shiftedFrom()).contains(day("2026-03-29"));
        var check = planned(after("surgery", Edge.START, "P1W", "P2W", "P3W"), "2026-03-14");
        assertThat(check.start()).isEqualTo(day("2026-03-27"));
        assertThat(check.why().shiftedFrom()).contains(day("2026-03-28"));
        assertThat(check.why().outside()).isFalse();
    }

    @Test
    void movesToAnEarlierOpenDayWhenTheWindowEndsBefore() {
        var check = planned(after("surgery", Edge.START, "P1W", "P2W", "P2W"), "2026-03-15");
        assertThat(check.start()).isEqualTo(day("2026-03-27"));
        assertThat(check.why().shiftedFrom()).contains(day("2026-03-29"));
    }

    @Test
    void saysWhyTheWindowHoldsNoOpenDayRatherThanBreakTheMaximum() {
        var check = planned(after("surgery", Edge.START, "P2W", "P2W", "P15D"), "2026-03-14");
        assertThat(check.why().outside()).isTrue();
        var clash = check.clash().orElseThrow();
        assertThat(clash.causes())
                .hasAtLeastOneElementOfType(Cause.Begins.class)
                .hasAtLeastOneElementOfType(Cause.OpenDay.class);
        assertThat(clash.ways()).anySatisfy(way -> {
            var give = (Clash.Way.Give) way;
            assertThat(give.rule().latest()).contains(Period.ofDays(16));
            assertThat(give.days()).isEqualTo(1);
        });
    }

    /** DBS-W2: every two weeks four times, from five weeks after an operation on 2026-04-14. */
    @Test
    void aStageThatRepeatsIsCountedFromTheFirstTime() {
        var timing = new Template.Timing(
                List.of(after("operation", Edge.START, "P4W", "P5W", "P6W")),
                Template.Length.about(Period.ZERO),
                Optional.empty(),
                true,
                Optional.empty(),
                false,
                false,
                Optional.of(new Template.Repeat(Period.ofWeeks(2), Optional.of(4), Optional.empty())),
                List.of());
        var template = path(stage("operation", begins()), stage("settings", timing));
        var plan = Paths.plan(template, begun("2026-04-14"), WEEKDAYS, TODAY);
        assertThat(plan.stages().stream().filter(s -> s.stage().id().equals("settings")))
                .extracting(Planned::start)
                .containsExactly(day("2026-05-19"), day("2026-06-02"), day("2026-06-16"), day("2026-06-30"));
    }

    @Test
    void keepsADayOfItsOwnFreeForWhatTheFamilyCannotMake() {
        var course = begun("2026-02-10").withAway(List.of(new Span(day("2026-03-24"), day("2026-03-26"))));
        var template = path(
                stage("surgery", begins()),
                stage(
                        "check",
                        after("surgery", Edge.START, "P5W", "P6W", "P7W"),
                        Period.ZERO,
                        Optional.empty(),
                        true,
                        false));
        var check = Paths.plan(template, course, WEEKDAYS, TODAY).stage("check").orElseThrow();
        assertThat(check.start()).isEqualTo(day("2026-03-23"));
    }

    @Test
    void aLaterDateThatIsFixedDrawsWhatMustComeBeforeItAlong() {
        var template = path(
                stage("ready", begins()),
                stage("consent", after("ready", Edge.START, "P1W", "P2W", "P30W")),
                stage("operation", after("consent", Edge.START, "P2W", "P6W", "P10W")));
        var plan = Paths.plan(template, begun("2026-02-01", "operation", "2026-07-01"), EVERY_DAY, TODAY);
        var consent = plan.stage("consent").orElseThrow();
        assertThat(consent.start()).isEqualTo(day("2026-04-22"));
        assertThat(consent.why().pushed()).containsInstanceOf(Cause.Begins.class);
        assertThat(consent.possible()).isEqualTo(new Span(day("2026-04-22"), day("2026-06-17")));
    }

    private static Planned planned(Template.After rule, String begun) {
        var template =
                path(stage("surgery", begins()), stage("check", rule, Period.ZERO, Optional.empty(), true, false));
        return Paths.plan(template, begun(begun), WEEKDAYS, TODAY)
                .stage("check")
                .orElseThrow();
    }

    @Test
    void keepsTheDayAPersonGaveAlsoWhenTheClinicIsClosed() {
        var template = path(
                stage("surgery", begins()),
                stage(
                        "check",
                        after("surgery", Edge.START, "P5W", "P6W", "P7W"),
                        Period.ZERO,
                        Optional.empty(),
                        true,
                        false));
        var sunday = day("2026-03-22");
        var plan = Paths.plan(
                template,
                Paths.given("2026-02-10", Map.of("check", new Given(sunday, Origin.SET_BY_HAND))),
                WEEKDAYS,
                TODAY);
        var check = plan.stage("check").orElseThrow();
        assertThat(check.start()).isEqualTo(sunday);
        assertThat(check.why().origin()).isEqualTo(Origin.SET_BY_HAND);
        assertThat(check.why().rule()).isEqualTo(day("2026-03-24"));
        assertThat(check.why().outside()).isFalse();
    }

    @Test
    void saysThatADateByHandLiesOutsideTheRule() {
        var template =
                path(stage("surgery", begins()), stage("check", after("surgery", Edge.START, "P5W", "P6W", "P7W")));
        var plan = Paths.plan(
                template,
                Paths.given("2026-02-10", Map.of("check", new Given(day("2026-04-01"), Origin.SET_BY_HAND))),
                EVERY_DAY,
                TODAY);
        assertThat(plan.stage("check").orElseThrow().why().outside()).isTrue();
    }

    @Test
    void neverLetsAnOperationWithoutADateSlipIntoThePast() {
        var template = path(
                stage("ready", begins()),
                stage(
                        "operation",
                        after("ready", Edge.START, "P2W", "P4W", "P8W"),
                        Period.ZERO,
                        Optional.empty(),
                        true,
                        true),
                stage("check", after("operation", "P6W")));
        var waiting = Paths.plan(template, begun("2026-01-05"), WEEKDAYS, TODAY);
        assertThat(start(waiting, "operation")).isEqualTo(day("2026-03-13"));
        assertThat(waiting.stage("operation").orElseThrow().why().outside()).isTrue();
        assertThat(start(waiting, "check")).isEqualTo(day("2026-04-24"));
        assertThat(waiting.now().orElseThrow().stage().id()).isEqualTo("ready");

        var happened = Paths.plan(template, begun("2026-01-05", "operation", "2026-02-10"), WEEKDAYS, TODAY);
        var operation = happened.stage("operation").orElseThrow();
        assertThat(operation.state()).isEqualTo(State.NOW);
        assertThat(operation.why().outside()).isFalse();
        assertThat(start(happened, "check")).isEqualTo(day("2026-03-24"));
    }

    @Test
    void anUndatedTrialIsBehindUsOnceALaterStageHasBeen() {
        var template = path(
                stage("tests", begins()),
                stage("trial", after("tests", "P6W"), Period.ofDays(2), Optional.empty(), false, true),
                stage("operation", after("trial", "P8W"), Period.ZERO, Optional.empty(), false, true));
        var plan = Paths.plan(template, begun("2025-10-21", "operation", "2026-02-10"), EVERY_DAY, TODAY);
        assertThat(start(plan, "trial")).isEqualTo(day("2025-12-02"));
        assertThat(plan.outOfOrder()).isEmpty();
        var ahead = Paths.plan(template, begun("2025-10-21", "operation", "2026-04-10"), EVERY_DAY, TODAY);
        assertThat(start(ahead, "trial")).isEqualTo(day("2026-03-13"));
    }

    @Test
    void aCheckOfOneDayDoesNotEndTheWeeksAroundIt() {
        var template = path(
                stage("surgery", begins()),
                stage("strength", after("surgery", "P1D"), Period.ZERO, Optional.of("half-year"), false, false),
                stage("check", after("surgery", "P3M")),
                stage("half-year", after("surgery", "P6M")));
        for (var today : List.of("2026-05-10", "2026-05-11", "2026-08-09")) {
            var plan = Paths.plan(template, begun("2026-02-10"), EVERY_DAY, day(today));
            assertThat(plan.now().orElseThrow().stage().id()).as(today).isEqualTo("strength");
        }
        var onTheDay = Paths.plan(template, begun("2026-02-10"), EVERY_DAY, day("2026-05-10"));
        assertThat(onTheDay.stage("check").orElseThrow().state()).isEqualTo(State.TO_COME);
        var after = Paths.plan(template, begun("2026-02-10"), EVERY_DAY, day("2026-05-11"));
        assertThat(after.stage("check").orElseThrow().state()).isEqualTo(State.PAST);
        assertThat(after.stage("strength").orElseThrow().end()).isEqualTo(day("2026-08-09"));
        var end = Paths.plan(template, begun("2026-02-10"), EVERY_DAY, day("2026-08-10"));
        assertThat(end.now().orElseThrow().stage().id()).isEqualTo("half-year");
    }

    @Test
    void waitsForTheStageInFrontAndSaysWhenThatIsTooLate() {
        var template = path(
                stage("surgery", begins()),
                stage("check", after("surgery", Edge.START, "P5W", "P6W", "P7W")),
                stage("three-months", after("surgery", Edge.START, "P11W", "P3M", "P15W")));
        var plan = Paths.plan(
                template,
                Paths.given("2026-02-10", Map.of("check", new Given(day("2026-06-10"), Origin.SET_BY_HAND))),
                EVERY_DAY,
                TODAY);
        assertThat(start(plan, "three-months")).isEqualTo(day("2026-06-10"));
        assertThat(plan.stage("three-months").orElseThrow().why().outside()).isTrue();
        assertThat(plan.outOfOrder()).isEmpty();
    }

    @Test
    void unfoldsVisitsFromTheFirstDayNotFromEachOther() {
        var yearly = Paths.visit("hips", "hip-xray", "P0D", "P2W", "P6M", 3);
        var before = Paths.visit("sleep", "pre-anaesthetic", "P-14D", "P11D");
        var template = path(with(stage("surgery", begins()), List.of(yearly, before), List.of()));
        var plan = Paths.plan(template, begun("2025-08-31"), EVERY_DAY, TODAY);
        assertThat(plan.stages().get(0).visits())
                .containsExactly(
                        window("test/surgery/hips", "hip-xray", "2025-08-31", "2025-09-14"),
                        window("test/surgery/hips/2", "hip-xray", "2026-02-28", "2026-03-14"),
                        window("test/surgery/hips/3", "hip-xray", "2026-08-31", "2026-09-14"),
                        window("test/surgery/sleep", "pre-anaesthetic", "2025-08-17", "2025-08-28"));
    }

    private static VisitWindow window(String purpose, String kind, String from, String until) {
        return new VisitWindow(purpose, kind, day(from), day(until), Optional.of(day(from)));
    }

    /** SDR-W1: precautions end 2026-03-24 when kept for six weeks. */
    @Test
    void aRuleOfCareHoldsUntilTheDayBeforeItEnds() {
        var rule = new Precaution(
                "passive-trunk-twist",
                true,
                Period.ZERO,
                Optional.of(Period.ofWeeks(6)),
                Bilingual.same("says"),
                "test");
        var template = path(with(stage("surgery", begins()), List.of(), List.of(rule)));
        var care = Paths.plan(template, begun("2026-02-10"), EVERY_DAY, TODAY)
                .stages()
                .get(0)
                .precautions()
                .get(0);
        assertThat(care.holdsOn(day("2026-02-09"))).isFalse();
        assertThat(care.holdsOn(day("2026-02-10"))).isTrue();
        assertThat(care.holdsOn(day("2026-03-23"))).isTrue();
        assertThat(care.holdsOn(day("2026-03-24"))).isFalse();
    }

    @Test
    void namesTheStageThatAPersonPutBeforeTheOneInFront() {
        var template = path(stage("first", begins()), stage("second", after("first", "P4W")));
        var plan = Paths.plan(
                template,
                Paths.given("2026-03-01", Map.of("second", new Given(day("2026-02-01"), Origin.ACTUAL))),
                EVERY_DAY,
                TODAY);
        assertThat(plan.outOfOrder().orElseThrow().stage().id()).isEqualTo("second");
    }
}
