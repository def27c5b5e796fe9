package org.hearthway.path.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
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
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Plan.Origin;
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

    @Property(tries = 400)
    void aStageByRuleNeverBeginsBeforeTheOneInFront(@ForAll("cases") Case any) {
        var stages = any.plan().stages();
        for (int i = 1; i < stages.size(); i++) {
            if (stages.get(i).why().origin() == Origin.RULE) {
                assertThat(stages.get(i).start())
                        .isAfterOrEqualTo(stages.get(i - 1).start());
            }
        }
    }

    @Property(tries = 400)
    void aGivenDateStays(@ForAll("cases") Case any) {
        var plan = any.plan();
        any.course().given().forEach((id, given) -> {
            var stage = plan.stage(id).orElseThrow();
            assertThat(stage.start()).isEqualTo(given.day());
            assertThat(stage.why().origin()).isEqualTo(given.origin());
        });
    }

    @Property(tries = 400)
    void aDateLiesInItsWindowOrSaysThatItDoesNot(@ForAll("cases") Case any) {
        for (var stage : any.plan().stages()) {
            var inside = !stage.start().isBefore(stage.earliest())
                    && stage.latest().map(last -> !stage.start().isAfter(last)).orElse(true);
            assertThat(stage.why().outside()).isEqualTo(!inside);
        }
    }

    @Property(tries = 400)
    void aStageThatNeedsAnOpenDayGetsOneOrTellsWhyNot(@ForAll("cases") Case any) {
        for (var stage : any.plan().stages()) {
            if (stage.stage().timing().onOpenDays()
                    && stage.why().origin() == Origin.RULE
                    && stage.clash().isEmpty()) {
                assertThat(any.isOpen()).accepts(stage.start());
            }
        }
    }

    @Property(tries = 400)
    void noStageEndsBeforeItBegins(@ForAll("cases") Case any) {
        assertThat(any.plan().stages()).allSatisfy(s -> assertThat(s.end()).isAfterOrEqualTo(s.start()));
    }

    @Property(tries = 400)
    void theSameInputGivesTheSamePlan(@ForAll("cases") Case any) {
        assertThat(any.plan()).isEqualTo(any.plan());
    }

    @Property(tries = 400)
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

    @Property(tries = 400)
    void whatTheClinicMustDateNeverLiesInThePastByItself(@ForAll("cases") Case any) {
        Assume.that(any.course().given().values().stream()
                .allMatch(given -> given.day().isAfter(any.today())));
        for (var stage : any.plan().stages()) {
            if (stage.stage().timing().signal() && stage.why().origin() == Origin.RULE) {
                assertThat(stage.start()).isAfter(any.today());
            }
        }
    }

    @Property(tries = 400)
    void aPlanWithoutAClashKeepsEveryRule(@ForAll("cases") Case any) {
        var plan = any.plan();
        Assume.that(plan.clashes().isEmpty());
        for (var planned : plan.stages()) {
            var rule = planned.stage().timing().begins().get(0);
            var base = planned.why().base().orElseThrow();
            if (planned.why().origin() == Origin.RULE) {
                assertThat(planned.start())
                        .isBetween(
                                base.plus(rule.earliest()),
                                base.plus(rule.latest().orElseThrow()));
                assertThat(planned.possible().first()).isBeforeOrEqualTo(planned.start());
                assertThat(planned.possible().last()).isAfterOrEqualTo(planned.start());
            }
        }
    }
}
