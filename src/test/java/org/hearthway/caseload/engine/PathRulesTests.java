package org.hearthway.caseload.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Calendar;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Course.Ended;
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Planner;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Length;
import org.hearthway.path.engine.Template.Outcome;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.Timing;
import org.hearthway.path.engine.Template.VisitNeed;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;
import org.hearthway.testing.PlanSamples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A path that begins on January 5, 2026: first visit, approval (usually 2 weeks, two ways to end), operation (the clinic
 * names its day; at least 1, usually 3, at most 6 weeks after the approval began), check 4 weeks later.
 */
class PathRulesTests {

    private static final LocalDate BEGUN = LocalDate.of(2026, 1, 5);

    private static final Template PATH = new Template(
            "way",
            1,
            Bilingual.same("way"),
            Optional.empty(),
            List.of(
                    stage("first", Optional.empty(), "P0D", "P0D", "P0D", "P7D", false),
                    stage("approval", Optional.of("first"), "P1W", "P2W", "P3W", "P14D", false, "yes", "no"),
                    stage("operation", Optional.of("approval"), "P1W", "P3W", "P6W", "P0D", true),
                    stage("check", Optional.of("operation"), "P3W", "P4W", "P5W", "P0D", false)),
            List.of());

    private static Stage stage(
            String id,
            Optional<String> after,
            String earliest,
            String usual,
            String latest,
            String lasts,
            boolean signal,
            String... outcomes) {
        var plain = PlanSamples.stage(id, Bilingual.same(id));
        var begins = new After(
                after,
                Edge.START,
                Period.parse(earliest),
                Optional.of(Period.parse(usual)),
                Optional.of(Period.parse(latest)));
        return new Stage(
                id,
                plain.name(),
                plain.says(),
                plain.why(),
                plain.source(),
                plain.who(),
                new Timing(
                        List.of(begins),
                        Length.about(Period.parse(lasts)),
                        Optional.empty(),
                        false,
                        Optional.empty(),
                        signal,
                        false,
                        Optional.empty(),
                        List.of()),
                plain.duties(),
                id.equals("check") ? List.of(need()) : List.of(),
                List.of(),
                List.of(outcomes).stream()
                        .map(way -> new Outcome(
                                way,
                                Bilingual.same(way),
                                Optional.empty(),
                                Set.of(),
                                Set.of(),
                                way.equals("no"),
                                Optional.empty()))
                        .toList(),
                List.of());
    }

    private static VisitNeed need() {
        return new VisitNeed(
                "look",
                "review",
                Period.ZERO,
                Period.ofDays(6),
                Optional.empty(),
                1,
                Optional.empty(),
                Optional.empty());
    }

    private static Course said(Map<String, String> days, Map<String, String> ends) {
        var given = days.entrySet().stream()
                .collect(java.util.stream.Collectors.toMap(
                        Map.Entry::getKey, entry -> new Given(LocalDate.parse(entry.getValue()), Plan.Origin.ACTUAL)));
        var ended = ends.entrySet().stream()
                .collect(java.util.stream.Collectors.toMap(
                        Map.Entry::getKey,
                        entry -> new Ended(
                                entry.getValue().split(" ")[0],
                                LocalDate.parse(entry.getValue().split(" ")[1]))));
        return Course.begun(BEGUN).withGiven(given).withEnded(ended);
    }

    private static Facts.OnPath on(Course course, String today) {
        var day = LocalDate.parse(today);
        var plan = Planner.plan(
                PATH, course, Calendar.of(Days.ALL, new Span(BEGUN.minusYears(1), BEGUN.plusYears(20))), day);
        var unbooked = plan.stages().stream()
                .flatMap(stage -> stage.visits().stream().map(window -> new Facts.Unbooked(stage.point(), window)))
                .toList();
        return new Facts.OnPath(plan, Set.of(), Map.of(), Set.of(), unbooked);
    }

    private static List<Cause> causes(Facts.OnPath path) {
        return Samples.rules().causes(Samples.onPath(path), path.plan().today());
    }

    private static List<Cause> causes(Course course, String today) {
        return causes(on(course, today));
    }

    private static final Course APPROVED = said(Map.of("approval", "2026-01-19"), Map.of("approval", "yes 2026-01-26"));

    /** Named for February 23, 2026. */
    private static final Course DATED =
            said(Map.of("approval", "2026-01-19", "operation", "2026-02-23"), Map.of("approval", "yes 2026-01-26"));

    @Test
    void aStageIsLateOnTheDayAfterItsLastDayAndNotOnTheDayItself() {
        // six weeks after January 19 is Monday, March 2
        assertThat(causes(APPROVED, "2026-03-01")).isEmpty();
        assertThat(causes(APPROVED, "2026-03-02")).extracting(Cause::rule).doesNotContain(Rule.STAGE_LATE);
        assertThat(causes(APPROVED, "2026-03-03")).singleElement().satisfies(late -> {
            assertThat(late.rule()).isEqualTo(Rule.STAGE_LATE);
            assertThat(late.subject()).isEqualTo("way/operation");
            assertThat(late.day()).isEqualTo("2026-03-02");
            assertThat(late.dueDay()).isEqualTo("2026-03-03");
        });
    }

    @Test
    void aStageThatBeganIsNotLate() {
        assertThat(causes(said(Map.of("operation", "2026-02-20"), Map.of("approval", "yes 2026-01-26")), "2026-03-10"))
                .isEmpty();
    }

    @Test
    void aStageIsNotLateOnceAVisitShowsThatItOrOneBehindItBegan() {
        var path = on(DATED, "2026-04-02");
        assertThat(causes(path)).extracting(Cause::subject).containsExactly("way/check");
        var seen = Map.of("check", LocalDate.of(2026, 3, 20));
        assertThat(causes(new Facts.OnPath(path.plan(), Set.of(), seen, Set.of(), path.unbooked())))
                .as("another visit of it is missing still")
                .extracting(Cause::rule)
                .containsExactly(Rule.STAGE_VISIT);
        assertThat(causes(new Facts.OnPath(path.plan(), Set.of(), Map.of(), Set.of("check"), path.unbooked())))
                .as("booked late")
                .extracting(Cause::rule)
                .containsExactly(Rule.STAGE_VISIT);
    }

    @Test
    void aVisitShowsThatAStageBeganAlsoBeforeItsRuleAllowsItButNotOneOfTheRoundBefore() {
        var path = on(DATED, "2026-04-02");
        for (var day : List.of("2026-02-24", "2026-02-22")) {
            var seen = Map.of("check", LocalDate.parse(day));
            // the operation was on February 23
            assertThat(causes(new Facts.OnPath(path.plan(), Set.of(), seen, Set.of(), path.unbooked())))
                    .extracting(Cause::rule)
                    .containsExactly(day.equals("2026-02-24") ? Rule.STAGE_VISIT : Rule.STAGE_LATE);
        }
    }

    @Test
    void troubleIsToldOnceWhereItBegins() {
        // the check counts from the operation: nothing is said of it while that one is late
        assertThat(causes(APPROVED, "2026-05-20")).extracting(Cause::subject).containsExactly("way/operation");
    }

    @Test
    void ofStagesThatAreLateSideBySideTheLastOneAnswersForTheOthers() {
        var stages = List.of(
                PATH.stages().get(0),
                stage("left", Optional.of("first"), "P1W", "P2W", "P3W", "P0D", false, "yes", "no"),
                stage("right", Optional.of("first"), "P1W", "P3W", "P4W", "P0D", false, "yes", "no"));
        var template = new Template("way", 1, Bilingual.same("way"), Optional.empty(), stages, List.of());
        var plan = Planner.plan(
                template,
                Course.begun(BEGUN),
                Calendar.of(Days.ALL, new Span(BEGUN.minusYears(1), BEGUN.plusYears(20))),
                LocalDate.of(2026, 4, 1));
        assertThat(causes(new Facts.OnPath(plan, Set.of(), Map.of(), Set.of(), List.of())))
                .extracting(Cause::subject)
                .containsExactly("way/right");
    }

    @ParameterizedTest
    @CsvSource({"2026-02-08,0", "2026-02-09,1", "2026-02-22,1"})
    void whatAnswersForANamedDayIsLookedAtTwoWeeksAhead(String today, int found) {
        var open = said(Map.of("approval", "2026-01-19", "operation", "2026-02-23"), Map.of());
        assertThat(causes(open, today)).hasSize(found).allSatisfy(waits -> {
            assertThat(waits.rule()).isEqualTo(Rule.STAGE_WAITS);
            assertThat(waits.subject()).isEqualTo("way/approval/operation");
            assertThat(waits.day()).isEqualTo("2026-02-23");
        });
        assertThat(causes(DATED, today)).as("answered").isEmpty();
    }

    @Test
    void anAnswerThatIsOverdueIsLookedAtAlsoWithoutANamedDay() {
        // usually two weeks from January 19: February 2
        var open = said(Map.of("approval", "2026-01-19"), Map.of());
        assertThat(causes(open, "2026-02-02")).isEmpty();
        assertThat(causes(open, "2026-02-03")).singleElement().satisfies(waits -> {
            assertThat(waits.rule()).isEqualTo(Rule.STAGE_WAITS);
            assertThat(waits.subject()).isEqualTo("way/approval/operation");
        });
    }

    @Test
    void aDayThatSlipsOnWithTheAnswerIsNoNewTrouble() {
        var open = said(Map.of("approval", "2026-01-19"), Map.of());
        assertThat(causes(open, "2026-02-12").get(0).key())
                .isEqualTo(causes(open, "2026-02-20").get(0).key());
    }

    @Test
    void whatSomebodySaidOfALaterStageAnswersForTheOneInFront() {
        assertThat(causes(said(Map.of("operation", "2026-02-02"), Map.of()), "2026-02-20"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2026-03-14,0", "2026-03-15,1", "2026-03-29,1"})
    void aVisitIsMissedTwoWeeksBeforeItsWindowEnds(String today, int found) {
        // four weeks after February 23: March 23 to 29
        assertThat(causes(DATED, today)).hasSize(found).allSatisfy(visit -> {
            assertThat(visit.rule()).isEqualTo(Rule.STAGE_VISIT);
            assertThat(visit.subject()).isEqualTo("way/check/look");
            assertThat(visit.day()).isEqualTo("2026-03-29");
            assertThat(visit.dueDay()).isEqualTo("2026-03-29");
        });
        var path = on(DATED, today);
        assertThat(causes(new Facts.OnPath(path.plan(), Set.of("way/check/look"), Map.of(), Set.of(), List.of())))
                .as("booked")
                .isEmpty();
    }

    @Test
    void aVisitWhoseTimeIsOverIsWorkedTodayUntilTheStageItselfIsLate() {
        assertThat(causes(DATED, "2026-03-30")).singleElement().satisfies(visit -> {
            assertThat(visit.rule()).isEqualTo(Rule.STAGE_VISIT);
            assertThat(visit.dueDay()).isEqualTo("2026-03-30");
        });
        assertThat(causes(DATED, "2026-03-31")).extracting(Cause::rule).containsExactly(Rule.STAGE_LATE);
    }

    @Test
    void aVisitOfAKindThatAnotherRuleAsksForStandsOnce() {
        var path = on(DATED, "2026-03-20");
        var check = new Facts.Check("HIPS", "review", LocalDate.of(2026, 3, 25), false);
        var facts = new Facts(
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(check),
                List.of(),
                List.of(path),
                Optional.empty());
        assertThat(Samples.rules().causes(facts, path.plan().today()))
                .extracting(Cause::rule)
                .containsExactly(Rule.CHECK);
    }

    @Test
    void nothingIsAskedForAStageWhoseDayNobodyNamed() {
        // the operation slips on from day to day, and the check with it
        assertThat(causes(APPROVED, "2026-02-25")).isEmpty();
    }

    @Test
    void ofAStageThatLastsUntilTheNextOneNoAnswerIsAskedForADayThatARuleGives() {
        var template = new Template(
                "way",
                1,
                Bilingual.same("way"),
                Optional.empty(),
                List.of(
                        PATH.stages().get(0),
                        until("weeks", "check", PATH.stages().get(1)),
                        stage("check", Optional.of("weeks"), "P1W", "P2W", "P5W", "P0D", false)),
                List.of());
        var day = LocalDate.of(2026, 3, 1);
        var plan = Planner.plan(
                template,
                Course.begun(BEGUN),
                Calendar.of(Days.ALL, new Span(BEGUN.minusYears(1), BEGUN.plusYears(20))),
                day);
        assertThat(causes(new Facts.OnPath(plan, Set.of(), Map.of(), Set.of(), List.of())))
                .isEmpty();
    }

    private static Stage until(String id, String end, Stage like) {
        var timing = like.timing();
        return new Stage(
                id,
                like.name(),
                like.says(),
                like.why(),
                like.source(),
                like.who(),
                new Timing(
                        timing.begins(),
                        timing.lasts(),
                        Optional.of(end),
                        false,
                        Optional.empty(),
                        false,
                        false,
                        Optional.empty(),
                        List.of()),
                like.duties(),
                List.of(),
                List.of(),
                like.outcomes(),
                List.of());
    }

    @Test
    void aPathThatIsOverIsSilent() {
        var over = said(Map.of("approval", "2026-01-19"), Map.of("approval", "no 2026-01-26"));
        for (var today : List.of("2026-01-27", "2026-03-20", "2027-03-20")) {
            assertThat(causes(over, today)).as(today).isEmpty();
        }
    }

    @Test
    void aPathThatTheTeamEndedIsSilent() {
        var closed = DATED.closedOn(LocalDate.of(2026, 3, 24));
        assertThat(on(closed, "2026-03-25").unbooked())
                .as("begun before it ended")
                .isNotEmpty();
        assertThat(causes(closed, "2026-03-25")).isEmpty();
    }

    @Test
    void aStageTakenOffThePlanIsSilent() {
        assertThat(causes(APPROVED.withStages(Set.of(), Set.of("operation", "check")), "2026-03-20"))
                .isEmpty();
    }

    @Test
    void aStageWithoutADayIsTold() {
        var begins = new After(
                Optional.of("first"),
                Edge.START,
                Period.ofDays(1),
                Optional.of(Period.ofDays(1)),
                Optional.of(Period.ofDays(1)));
        var tight = DATED.withGaps(Map.of(new Course.RuleAt("check", 0), begins));
        assertThat(causes(tight, "2026-02-01")).singleElement().satisfies(noDay -> {
            assertThat(noDay.rule()).isEqualTo(Rule.STAGE_NO_DAY);
            assertThat(noDay.subject()).isEqualTo("way/check");
            assertThat(noDay.dueDay()).isEqualTo("2026-02-01");
        });
    }
}
