package org.hearthway.path.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Stage;

/** What holds for every path, whatever its rules, the dates given and the clinic's days. */
class PlannerProperties {

    private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);
    private static final int DAYS = 1461;

    /** A whole situation: path, dates given, open weekdays, today. */
    record Case(Template template, Course course, Set<DayOfWeek> open, LocalDate today) {

        Predicate<LocalDate> isOpen() {
            return day -> open.contains(day.getDayOfWeek());
        }

        Plan plan() {
            return Paths.plan(template, course, isOpen(), today);
        }
    }

    /** The raw numbers of a stage; gaps in days or months, from any stage in front. */
    record Draft(
            int anchor, boolean fromEnd, boolean months, int earliest, int more, int evenMore, int lasts, int flags) {

        Stage stage(int number) {
            var stage = number == 0 ? Optional.<String>empty() : Optional.of("s" + Math.floorMod(anchor, number));
            var begins = new After(
                    stage,
                    fromEnd ? Edge.END : Edge.START,
                    gap(earliest),
                    Optional.of(gap(earliest + more)),
                    Optional.of(gap(earliest + more + evenMore)));
            return Paths.stage(
                    "s" + number, begins, Period.ofDays(lasts), Optional.empty(), (flags & 1) != 0, (flags & 6) == 6);
        }

        private Period gap(int number) {
            return months ? Period.ofMonths(number / 20) : Period.ofDays(number);
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        var ints = Arbitraries.integers();
        Arbitrary<Draft> draft = Combinators.combine(
                        ints.between(0, 9),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        ints.between(0, 120),
                        ints.between(0, 60),
                        ints.between(0, 60),
                        ints.between(0, 200),
                        ints.between(0, 7))
                .as(Draft::new);
        Arbitrary<LocalDate> dates = ints.between(0, DAYS).map(FIRST::plusDays);
        Arbitrary<Map<Integer, LocalDate>> given =
                Arbitraries.maps(ints.between(0, 7), dates).ofMaxSize(3);
        Arbitrary<Set<DayOfWeek>> open = Arbitraries.of(DayOfWeek.class).set().ofMinSize(1);
        return Combinators.combine(draft.list().ofMinSize(1).ofMaxSize(8), dates, given, open, dates)
                .as((drafts, begun, fixed, weekdays, today) -> {
                    var stages = new ArrayList<Stage>();
                    for (int i = 0; i < drafts.size(); i++) {
                        stages.add(drafts.get(i).stage(i));
                    }
                    var dated = new HashMap<String, Given>();
                    fixed.forEach((i, day) -> {
                        if (i < stages.size()) {
                            dated.put("s" + i, new Given(day, i % 2 == 0 ? Origin.ACTUAL : Origin.SET_BY_HAND));
                        }
                    });
                    return new Case(
                            Paths.path(stages.toArray(Stage[]::new)), Paths.given(begun, dated), weekdays, today);
                });
    }

    @Property
    void aStageByRuleNeverBeginsBeforeTheOneInFront(@ForAll("cases") Case any) {
        var stages = any.plan().stages();
        for (int i = 1; i < stages.size(); i++) {
            if (stages.get(i).why().origin() == Origin.RULE) {
                assertThat(stages.get(i).start())
                        .isAfterOrEqualTo(stages.get(i - 1).start());
            }
        }
    }

    @Property
    void aGivenDateStays(@ForAll("cases") Case any) {
        var plan = any.plan();
        any.course().given().forEach((id, given) -> {
            var stage = plan.stage(id).orElseThrow();
            assertThat(stage.start()).isEqualTo(given.day());
            assertThat(stage.why().origin()).isEqualTo(given.origin());
        });
    }

    @Property
    void aDateLiesInItsWindowOrSaysThatItDoesNot(@ForAll("cases") Case any) {
        for (var stage : any.plan().stages()) {
            var inside =
                    !stage.start().isBefore(stage.earliest()) && !stage.start().isAfter(stage.latest());
            assertThat(stage.why().outside()).isEqualTo(!inside);
        }
    }

    @Property
    void aStageThatNeedsAnOpenDayGetsOne(@ForAll("cases") Case any) {
        for (var stage : any.plan().stages()) {
            if (stage.stage().timing().onOpenDays() && stage.why().origin() == Origin.RULE) {
                assertThat(any.isOpen()).accepts(stage.start());
            }
        }
    }

    @Property
    void noStageEndsBeforeItBegins(@ForAll("cases") Case any) {
        assertThat(any.plan().stages()).allSatisfy(s -> assertThat(s.end()).isAfterOrEqualTo(s.start()));
    }

    @Property
    void theSameInputGivesTheSamePlan(@ForAll("cases") Case any) {
        assertThat(any.plan()).isEqualTo(any.plan());
    }

    @Property
    void atMostOneStageIsNowAndItHasBegun(@ForAll("cases") Case any) {
        var plan = any.plan();
        var now = plan.stages().stream().filter(s -> s.state() == State.NOW).toList();
        var begun = plan.stages().stream().anyMatch(s -> !s.start().isAfter(any.today()));
        assertThat(now)
                .hasSize(begun ? 1 : 0)
                .allSatisfy(s -> assertThat(s.start()).isBeforeOrEqualTo(any.today()));
        assertThat(plan.stages()).allSatisfy(s -> {
            if (s.state() == State.TO_COME) {
                assertThat(s.start()).isAfterOrEqualTo(any.today());
            }
        });
    }

    @Property
    void whatTheClinicMustDateNeverLiesInThePastByItself(@ForAll("cases") Case any) {
        Assume.that(any.course().given().values().stream()
                .allMatch(given -> given.day().isAfter(any.today())));
        for (var stage : any.plan().stages()) {
            if (stage.stage().timing().signal() && stage.why().origin() == Origin.RULE) {
                assertThat(stage.start()).isAfter(any.today());
            }
        }
    }

    @Property
    void movingAStageMovesNothingInFrontOfIt(
            @ForAll("cases") Case any, @ForAll @IntRange(max = 7) int which, @ForAll @IntRange(max = DAYS) int day) {
        Assume.that(which < any.template().stages().size());
        var before = any.plan();
        var after = moved(any, which, FIRST.plusDays(day)).plan();
        // a date in the past says of undated operations in front that they have been
        Assume.that(before.stages().subList(0, which).stream()
                .noneMatch(s -> s.stage().timing().signal() && s.why().origin() == Origin.RULE));
        assertThat(starts(after).subList(0, which)).isEqualTo(starts(before).subList(0, which));
    }

    @Property
    void movingAStageLeavesWhatNeitherCountsFromItNorWaitsForIt(
            @ForAll("cases") Case any, @ForAll @IntRange(max = 7) int which, @ForAll @IntRange(max = DAYS) int day) {
        Assume.that(which < any.template().stages().size());
        var before = any.plan();
        var after = moved(any, which, FIRST.plusDays(day)).plan();
        // a date in the past says of undated operations in front that they have been, and what counts from them moves
        Assume.that(before.stages().subList(0, which).stream()
                .noneMatch(s -> s.stage().timing().signal() && s.why().origin() == Origin.RULE));
        for (int i = which + 1; i < before.stages().size(); i++) {
            var free = !countsFrom(any, i, which) && !waits(before, i) && !waits(after, i);
            if (free) {
                assertThat(after.stages().get(i).start())
                        .isEqualTo(before.stages().get(i).start());
            }
        }
    }

    private static Case moved(Case any, int which, LocalDate day) {
        var given = new HashMap<>(any.course().given());
        given.put("s" + which, new Given(day, Origin.SET_BY_HAND));
        return new Case(any.template(), Paths.given(any.course().begun(), given), any.open(), any.today());
    }

    private static List<LocalDate> starts(Plan plan) {
        return plan.stages().stream().map(Planned::start).toList();
    }

    /** Whether a stage counts, over any number of steps that follow rules, from another. */
    private static boolean countsFrom(Case any, int stage, int which) {
        if (any.course().given().containsKey("s" + stage)) {
            return false;
        }
        return any.template()
                .stages()
                .get(stage)
                .begins()
                .stage()
                .map(id -> Integer.parseInt(id.substring(1)))
                .filter(anchor ->
                        anchor == which || waitsInvolved(any, anchor, which) || countsFrom(any, anchor, which))
                .isPresent();
    }

    /** An anchor behind the moved stage may itself have been pushed by it. */
    private static boolean waitsInvolved(Case any, int anchor, int which) {
        return anchor > which && !any.course().given().containsKey("s" + anchor);
    }

    /** Whether the order alone, not the rule, set a stage's window. */
    private static boolean waits(Plan plan, int i) {
        var stage = plan.stages().get(i);
        var base = stage.why().base().orElseThrow();
        return !stage.earliest().equals(base.plus(stage.stage().begins().earliest()))
                || stage.start().equals(plan.stages().get(i - 1).start())
                || base.plus(stage.stage().begins().usual())
                        .isBefore(plan.stages().get(i - 1).start());
    }
}
