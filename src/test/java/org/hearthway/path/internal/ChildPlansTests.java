package org.hearthway.path.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Devices;
import org.hearthway.child.Names;
import org.hearthway.content.ContentReading;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Beginning;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.Start;
import org.hearthway.path.PrecautionNames;
import org.hearthway.path.SignNames;
import org.hearthway.path.VisitKindNames;
import org.hearthway.path.VisitsForPlans;
import org.hearthway.path.VisitsOnDay;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Remark;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.network.Span;
import org.hearthway.path.events.PathChanged;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.SettableClock;
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
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026, 10:00 in New York. */
@SpringJUnitConfig(ChildPlansTests.Setting.class)
class ChildPlansTests {

    @Import(LeanClinic.class)
    @ComponentScan("org.hearthway.path.internal")
    static class Setting {
        @Bean
        Heard heard() {
            return new Heard();
        }

        @Bean
        ChildRegister children() {
            return mock();
        }

        @Bean
        Devices devices() {
            return mock();
        }

        @Bean
        AuditTrail trail() {
            return mock();
        }

        /** A clinic that has put no words of its own. */
        @Bean
        SignOff signOff() {
            return mock();
        }

        @Bean
        SignNames signs() {
            return Set::of;
        }

        @Bean
        PrecautionNames precautions() {
            return Set::of;
        }

        @Bean
        VisitsOnDay onDay() {
            return day -> List.of();
        }

        @Bean
        VisitsForPlans booked() {
            return child -> List.of();
        }

        /** Knows no kind of visit; the cross-check has a test of its own. */
        @Bean
        VisitKindNames visitKinds() {
            return new VisitKindNames() {
                @Override
                public Set<String> names() {
                    return Set.of();
                }

                @Override
                public Optional<Bilingual> name(String kind) {
                    return Optional.empty();
                }

                @Override
                public Set<DayOfWeek> weekdays(String kind) {
                    return Set.of();
                }
            };
        }
    }

    /** Hears what paths tell. */
    static class Heard {
        final List<PathChanged> changes = new ArrayList<>();

        @EventListener
        void on(PathChanged change) {
            changes.add(change);
        }
    }

    private static final Viewer SURGEON =
            new Viewer.Person(AccountId.random(), "Surgeon", Set.of(Role.PHYSICIAN), Language.EN, LeanClinic.NEW_YORK);
    private static final LocalDate BEGIN = LocalDate.of(2025, 10, 6);
    private static final LocalDate SURGERY = LocalDate.of(2026, 2, 10);

    @Autowired
    private Plans plans;

    @Autowired
    private ChildRegister children;

    @Autowired
    private PathKind paths;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private Heard heard;

    @Autowired
    private Words words;

    @Autowired
    private SettableClock clock;

    private final ChildId child = ChildId.random();

    @BeforeEach
    void openTheGate() {
        gate.deny();
        clock.set(HearthwayTest.START);
        if (paths.all().isEmpty()) {
            ContentReading.shipped(paths);
        }
    }

    private void begin() {
        plans.begin(SURGEON, child, "sdr", Plans.Beginning.INSTEAD, BEGIN, "referred by the clinic");
        plans.apply(SURGEON, child, "sdr", new Change.Fix("operation", SURGERY), "done as planned", 1);
        heard.changes.clear();
    }

    private LocalDate start(String stage) {
        return plans.plans(SURGEON, child).stream()
                .findFirst()
                .orElseThrow()
                .plan()
                .stage(stage)
                .orElseThrow()
                .start();
    }

    @Test
    void hasNoPlanBeforeAPathIsBegun() {
        assertThat(plans.plans(SURGEON, child).stream().findFirst()).isEmpty();
        assertThat(plans.precautions(SURGEON, child, SURGERY)).isEmpty();
        assertThat(plans.all(SURGEON)).doesNotContainKey(child);
        assertThatThrownBy(() -> plans.preview(SURGEON, child, "sdr", new Change.Fix("operation", SURGERY)))
                .isInstanceOf(Invalid.class);
    }

    @Test
    void adviceCountsTheAgeOnTheDayOfSurgeryAndMovesWithIt() {
        bornOn(LocalDate.of(2016, 2, 11), Optional.of(2));
        assertThat(plans.advice(SURGEON, child, "sdr")).isEmpty();
        begin();
        assertThat(age(plans.advice(SURGEON, child, "sdr")).answer()).isEqualTo(Remark.Answer.USUAL);
        plans.apply(SURGEON, child, "sdr", new Change.Fix("operation", SURGERY.plusDays(1)), "one day later", 2);
        assertThat(age(plans.advice(SURGEON, child, "sdr")).answer()).isEqualTo(Remark.Answer.OUTSIDE);
        assertThat(age(plans.advice(SURGEON, child, "sdr")).own()).contains(10);
    }

    @Test
    void adviceForAPathToBeginSavesNothingAndBlocksNothing() {
        bornOn(LocalDate.of(2025, 1, 1), Optional.empty());
        var remarks = plans.outlook(SURGEON, child, Start.atFirst("sdr", Beginning.INSTEAD, BEGIN))
                .advice();
        assertThat(age(remarks).answer()).isEqualTo(Remark.Answer.OUTSIDE);
        assertThat(plans.plans(SURGEON, child).stream().findFirst()).isEmpty();
        assertThatThrownBy(() -> plans.outlook(SURGEON, child, Start.atFirst("no-such-path", Beginning.INSTEAD, BEGIN)))
                .isInstanceOf(Invalid.class);
        plans.begin(SURGEON, child, "sdr", Plans.Beginning.INSTEAD, BEGIN, "the family and the team chose it");
        assertThat(plans.plans(SURGEON, child).stream().findFirst()).isPresent();
    }

    @Test
    void adviceIsForTheTeam() {
        begin();
        gate.deny(Action.SEE_FOLDER, Action.CHANGE_PATH);
        assertThatThrownBy(() -> plans.advice(SURGEON, child, "sdr")).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> plans.outlook(SURGEON, child, Start.atFirst("sdr", Beginning.INSTEAD, BEGIN)))
                .isInstanceOf(NotAvailable.class);
    }

    private static Remark age(List<Remark> remarks) {
        return remarks.stream()
                .filter(r -> r.advice().ages().isPresent())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFixedOperationMovesWhatFollows() {
        begin();
        assertThat(start("operation")).isEqualTo(SURGERY);
        assertThat(start("six-week-check")).isEqualTo(LocalDate.of(2026, 3, 24));
        // 2026-05-10 is a Sunday
        assertThat(start("three-month-review")).isEqualTo(LocalDate.of(2026, 5, 11));
        assertThat(plans.all(SURGEON)).containsKey(child);
        assertThat(plans.plans(SURGEON, child).stream()
                        .findFirst()
                        .orElseThrow()
                        .version())
                .isEqualTo(2);
    }

    @Test
    void aPreviewSavesNothingAndNamesWhatMoves() {
        begin();
        var preview = plans.preview(
                SURGEON, child, "sdr", new Change.SetByHand("six-month-review", LocalDate.of(2026, 8, 20)));
        assertThat(preview.effect().moves())
                .extracting(Plans.Move::stage)
                .containsExactly("six-month-review", "further");
        assertThat(preview.effect().moves().get(0).from()).isEqualTo(LocalDate.of(2026, 8, 10));
        assertThat(preview.outsideTheRule()).isFalse();
        assertThat(start("six-month-review")).isEqualTo(LocalDate.of(2026, 8, 10));
        assertThat(heard.changes).isEmpty();
        var late = plans.preview(
                SURGEON, child, "sdr", new Change.SetByHand("six-month-review", LocalDate.of(2026, 10, 1)));
        assertThat(late.outsideTheRule()).isTrue();
    }

    @Test
    void anAppliedChangeIsKeptWithItsReasonAndToldInBothLanguages() {
        begin();
        plans.apply(
                SURGEON,
                child,
                "sdr",
                new Change.SetByHand("six-month-review", LocalDate.of(2026, 8, 20)),
                " family away ",
                2);
        assertThat(start("six-month-review")).isEqualTo(LocalDate.of(2026, 8, 20));
        assertThat(heard.changes).singleElement().satisfies(change -> {
            assertThat(change.words().en())
                    .isEqualTo(
                            "“Six-month check” is now on Thu, Aug 20. It was on Mon, Aug 10. One more date moved too.");
            assertThat(change.words().es())
                    .startsWith("«Revisión de los seis meses» es ahora el")
                    .contains("otra fecha");
        });
        var newest = plans.decisions(SURGEON, child).get(0);
        assertThat(newest.kind()).isEqualTo(Plans.Kind.SET_BY_HAND);
        assertThat(newest.reason()).isEqualTo("family away");
        assertThat(newest.version()).isEqualTo(3);
        assertThat(newest.day()).contains(LocalDate.of(2026, 8, 20));
        assertThat(plans.decisions(SURGEON, child)).hasSize(3);
    }

    @Test
    void goesBackToTheRuleWithoutForgettingWhatWasSet() {
        begin();
        plans.apply(
                SURGEON, child, "sdr", new Change.SetByHand("six-month-review", LocalDate.of(2026, 8, 20)), "away", 2);
        plans.apply(SURGEON, child, "sdr", new Change.ByRule("six-month-review"), "back at home", 3);
        var stage = plans.plans(SURGEON, child).stream()
                .findFirst()
                .orElseThrow()
                .plan()
                .stage("six-month-review")
                .orElseThrow();
        assertThat(stage.start()).isEqualTo(LocalDate.of(2026, 8, 10));
        assertThat(stage.why().origin()).isEqualTo(Origin.RULE);
        assertThat(plans.decisions(SURGEON, child)).hasSize(4);
    }

    @Test
    void ofTwoWhoChangeAtOnceTheSecondIsToldAndNothingIsLost() {
        begin();
        plans.apply(
                SURGEON, child, "sdr", new Change.SetByHand("six-month-review", LocalDate.of(2026, 8, 20)), "away", 2);
        assertThatThrownBy(() -> plans.apply(
                        SURGEON,
                        child,
                        "sdr",
                        new Change.SetByHand("six-month-review", LocalDate.of(2026, 8, 6)),
                        "other",
                        2))
                .isInstanceOf(Overtaken.class);
        assertThat(start("six-month-review")).isEqualTo(LocalDate.of(2026, 8, 20));
    }

    @Test
    void aNewPathTakesThePlaceOfTheOldOneAndKeepsItsTrail() {
        begin();
        plans.begin(
                SURGEON, child, "itb", Plans.Beginning.INSTEAD, LocalDate.of(2026, 3, 12), "decided with the family");
        var plan = plans.plans(SURGEON, child).stream().findFirst().orElseThrow();
        assertThat(plan.plan().template().id()).isEqualTo("itb");
        assertThat(plan.plan().stage("operation").orElseThrow().why().origin()).isEqualTo(Origin.RULE);
        assertThat(plans.decisions(SURGEON, child))
                .extracting(Plans.Decision::kind)
                .containsExactly(Plans.Kind.BEGUN, Plans.Kind.FIXED, Plans.Kind.BEGUN);
    }

    /** Reference table SDR-W1: rules kept six weeks end on 2026-03-24. */
    @Test
    void givesTheRulesOfCareOfADay() {
        begin();
        assertThat(plans.precautions(SURGEON, child, LocalDate.of(2026, 3, 23)))
                .extracting(c -> c.rule().tag())
                .contains("passive-trunk-twist", "passive-hip-flexion-past-90")
                .doesNotContain("pool");
        assertThat(plans.precautions(SURGEON, child, LocalDate.of(2026, 3, 24))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "operation, 2025-10-05, day, path.problem.before-begin",
        "operation, 2036-03-13, day, path.problem.too-far",
        "operation, 2025-10-07, day, path.problem.order",
        "nowhere, 2026-03-20, stage, path.problem.stage"
    })
    void refusesADayOutOfBoundsOrOrderWithAWayOut(String stage, LocalDate day, String field, String key) {
        begin();
        var refused = catchThrowableOfType(
                Invalid.class, () -> plans.apply(SURGEON, child, "sdr", new Change.Fix(stage, day), "reason", 2));
        assertThat(refused.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.field()).isEqualTo(field);
            assertThat(problem.key()).isEqualTo(key);
            for (var language : Language.values()) {
                assertThat(words.say(language, problem)).isNotBlank().doesNotContain("{");
            }
        });
        assertThat(start("operation")).isEqualTo(SURGERY);
    }

    @Test
    void refusesAReasonThatIsTooShortOrTooLong() {
        begin();
        for (var reason : List.of("", "  a  ", "r".repeat(501))) {
            var refused = catchThrowableOfType(
                    Invalid.class,
                    () -> plans.apply(SURGEON, child, "sdr", new Change.ByRule("six-month-review"), reason, 2));
            assertThat(refused.problems()).extracting(Problem::field).containsExactly("reason");
        }
    }

    @Test
    void saysAllThatIsWrongWithABeginningAtOnce() {
        var refused = catchThrowableOfType(
                Invalid.class,
                () -> plans.begin(SURGEON, child, "nowhere", Plans.Beginning.INSTEAD, LocalDate.of(2005, 1, 1), ""));
        assertThat(refused.problems()).extracting(Problem::field).containsExactly("reason", "pathway", "day");
    }

    @Test
    void refusesAViewerWhoMayNot() {
        begin();
        gate.deny(Action.SEE_FAMILY_PAGES, Action.SEE_FOLDER, Action.CHANGE_PATH, Action.LIST_CHILDREN);
        var change = new Change.Fix("operation", SURGERY);
        assertThatThrownBy(() -> plans.plans(SURGEON, child).stream().findFirst())
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> plans.all(SURGEON)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> plans.decisions(SURGEON, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> plans.precautions(SURGEON, child, SURGERY)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> plans.preview(SURGEON, child, "itb", change)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> plans.apply(SURGEON, child, "itb", change, "reason", 2))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> plans.begin(SURGEON, child, "itb", Plans.Beginning.INSTEAD, SURGERY, "reason"))
                .isInstanceOf(NotAvailable.class);
    }

    @Test
    void explainsEveryDateOfEveryPathInBothLanguages() {
        for (var template : plans.pathways()) {
            var other = ChildId.random();
            plans.begin(
                    SURGEON, other, template.id(), Plans.Beginning.INSTEAD, LocalDate.of(2025, 6, 2), "for the words");
            var plan = plans.plans(SURGEON, other).stream()
                    .findFirst()
                    .orElseThrow()
                    .plan();
            for (var stage : plan.stages()) {
                var why = plans.why(plan, stage);
                assertThat(why.en()).isNotBlank().doesNotContain("{").endsWith(".");
                assertThat(why.es()).isNotBlank().doesNotContain("{").isNotEqualTo(why.en());
            }
        }
    }

    @Test
    void explainsADateInOneSentence() {
        begin();
        var plan =
                plans.plans(SURGEON, child).stream().findFirst().orElseThrow().plan();
        assertThat(plans.why(plan, plan.stage("six-week-check").orElseThrow()).en())
                .isEqualTo("6 weeks after the first day of “Surgery” (Feb 10, 2026).");
        assertThat(plans.why(plan, plan.stage("three-month-review").orElseThrow())
                        .en())
                .isEqualTo("3 months after the first day of “Surgery” (Feb 10, 2026)."
                        + " The clinic is closed on May 10, 2026, so it moves to an open day.");
        assertThat(plans.why(plan, plan.stage("operation").orElseThrow()).en())
                .startsWith("The clinic has set this day.");
    }

    @Test
    void anOperationWithoutADateSaysSo() {
        plans.begin(SURGEON, child, "sdr", Plans.Beginning.INSTEAD, LocalDate.of(2025, 6, 2), "referred");
        var plan =
                plans.plans(SURGEON, child).stream().findFirst().orElseThrow().plan();
        var operation = plan.stage("operation").orElseThrow();
        assertThat(operation.start()).isAfterOrEqualTo(LocalDate.of(2026, 3, 13));
        assertThat(plans.why(plan, operation).en()).contains("The clinic has not set this date yet.");
    }

    private List<String> stages() {
        return plans.plans(SURGEON, child).stream().findFirst().orElseThrow().plan().next().stream()
                .map(stage -> stage.stage().id())
                .toList();
    }

    private Plan now() {
        return plans.plans(SURGEON, child).stream().findFirst().orElseThrow().plan();
    }

    /** US prescribing information, screening: no response to the largest trial dose is no candidate. */
    @Test
    void aTrialThatDidNothingEndsThePathAndTakingThatBackRestoresAllOfIt() {
        plans.begin(SURGEON, child, "itb", Plans.Beginning.INSTEAD, LocalDate.of(2025, 12, 1), "referred");
        var before = now();
        heard.changes.clear();

        plans.apply(
                SURGEON,
                child,
                "itb",
                new Change.End("test-dose", "no-response", LocalDate.of(2026, 3, 10)),
                "no response to the largest dose",
                1);

        assertThat(stages()).contains("test-dose").doesNotContain("operation", "device-care", "growing");
        assertThat(now().over().orElseThrow().outcome().map(Template.Outcome::id))
                .contains("no-response");
        assertThat(heard.changes)
                .singleElement()
                .satisfies(told -> assertThat(told.words().en())
                        .isEqualTo(before.template()
                                .stage("test-dose")
                                .orElseThrow()
                                .outcome("no-response")
                                .orElseThrow()
                                .tells()
                                .orElseThrow()
                                .en()));

        plans.undo(SURGEON, child, 2, "entered for another child", 2);

        assertThat(now()).isEqualTo(before);
        assertThat(plans.decisions(SURGEON, child))
                .extracting(Plans.Decision::undone)
                .containsExactly(false, true, false);

        plans.undo(SURGEON, child, 3, "it was this child after all", 3);
        assertThat(now().over()).isPresent();
    }

    private List<String> paths() {
        return plans.plans(SURGEON, child).stream()
                .map(on -> on.plan().template().id())
                .toList();
    }

    @Test
    void aPathBegunBesideAnotherLeavesItAsItIs() {
        begin();
        var before = now();
        plans.begin(SURGEON, child, "rehab", Plans.Beginning.BESIDE, LocalDate.of(2026, 3, 12), "weeks of therapy");
        assertThat(paths()).containsExactly("sdr", "rehab");
        assertThat(now()).isEqualTo(before);

        plans.apply(
                SURGEON,
                child,
                "rehab",
                new Change.SetByHand("goals", LocalDate.of(2026, 4, 2)),
                "the first free room",
                3);
        assertThat(now()).isEqualTo(before);
        assertThat(plans.decisions(SURGEON, child).get(0).path().map(Bilingual::en))
                .isNotEqualTo(plans.decisions(SURGEON, child).get(2).path().map(Bilingual::en));

        plans.begin(SURGEON, child, "itb", Plans.Beginning.INSTEAD, LocalDate.of(2026, 3, 12), "chosen");
        assertThat(paths()).containsExactly("itb");
        plans.undo(SURGEON, child, 5, "not chosen after all", 5);
        assertThat(paths()).containsExactly("sdr", "rehab");
        assertThat(plans.preview(SURGEON, child, "rehab", new Change.ByRule("goals"))
                        .before()
                        .stage("goals")
                        .orElseThrow()
                        .start())
                .isEqualTo(LocalDate.of(2026, 4, 2));
    }

    @Test
    void careRulesOfEveryPathHold() {
        begin();
        var alone = plans.precautions(SURGEON, child, LocalDate.of(2026, 2, 20));
        plans.begin(SURGEON, child, "itb", Plans.Beginning.BESIDE, LocalDate.of(2025, 12, 1), "both, in this test");
        plans.apply(SURGEON, child, "itb", new Change.Fix("operation", LocalDate.of(2026, 2, 18)), "done", 3);
        assertThat(plans.precautions(SURGEON, child, LocalDate.of(2026, 2, 20)))
                .containsAll(alone)
                .hasSizeGreaterThan(alone.size());
    }

    @Test
    void anEndedPathKeepsWhatHasBegunAndItsCareRulesAndStandsBehindTheOthers() {
        begin();
        plans.begin(SURGEON, child, "rehab", Plans.Beginning.BESIDE, LocalDate.of(2026, 3, 2), "weeks of therapy");
        var care = plans.precautions(SURGEON, child, LocalDate.of(2026, 3, 20));
        assertThat(care).isNotEmpty();
        var effect = plans.effectOfClosing(SURGEON, child, "sdr", LocalDate.of(2026, 3, 12));
        assertThat(effect.leaving().stream().map(Bilingual::en)).contains("Six-month check");
        assertThat(effect.moves()).isEmpty();

        plans.close(SURGEON, child, "sdr", LocalDate.of(2026, 3, 12), "goes on at another clinic", 3);

        assertThat(paths()).containsExactly("rehab", "sdr");
        var ended = plans.plans(SURGEON, child).get(1).plan();
        assertThat(ended.over()).contains(new Plan.Over(LocalDate.of(2026, 3, 12), Optional.empty()));
        assertThat(ended.stages()).noneMatch(stage -> stage.start().isAfter(LocalDate.of(2026, 3, 12)));
        assertThat(ended.stage("operation")).isPresent();
        assertThat(plans.precautions(SURGEON, child, LocalDate.of(2026, 3, 20))).containsAll(care);
        assertThatThrownBy(() ->
                        plans.close(SURGEON, child, "rehab", LocalDate.of(2026, 3, 13), "not before it has ended", 4))
                .isInstanceOf(Invalid.class);
        assertThatThrownBy(() -> plans.close(SURGEON, child, "rehab", LocalDate.of(2026, 3, 12), "too late", 3))
                .isInstanceOf(Overtaken.class);
        plans.undo(SURGEON, child, 4, "she stays", 4);
        assertThat(paths()).containsExactly("sdr", "rehab");
    }

    /** The six-month check of this child lies on Monday, August 10, 2026. */
    @Test
    void whileTheFamilyIsAwayNothingIsPlannedThatNeedsTheClinic() {
        begin();
        var before = now();
        var august = new Span(LocalDate.of(2026, 8, 8), LocalDate.of(2026, 8, 23));
        var effect = plans.effectOfAway(SURGEON, child, august);
        assertThat(effect.moves()).extracting(Plans.Move::stage).contains("six-month-review");
        assertThat(now()).isEqualTo(before);

        plans.away(SURGEON, child, august, "with the grandparents", 2);

        var stage = now().stage("six-month-review").orElseThrow();
        assertThat(august.holds(stage.start())).isFalse();
        assertThat(plans.why(now(), stage).en()).contains("The family cannot come on Aug 10, 2026");
        assertThat(now().stages())
                .filteredOn(
                        one -> one.stage().timing().onOpenDays() && one.start().isAfter(LocalDate.of(2026, 3, 12)))
                .noneMatch(one -> august.holds(one.start()));
        var decision = plans.decisions(SURGEON, child).get(0);
        assertThat(decision.day()).contains(august.first());
        assertThat(decision.last()).contains(august.last());
        plans.undo(SURGEON, child, 3, "the journey is off", 3);
        assertThat(now()).isEqualTo(before);
    }

    @Test
    void thePathAloneKeepsWhatHappenedAndDropsWhatTheTeamChose() {
        begin();
        var alone = now();
        plans.apply(
                SURGEON, child, "sdr", new Change.SetByHand("six-month-review", LocalDate.of(2026, 8, 20)), "room", 2);
        var optional = now().template().stages().stream()
                .filter(stage -> stage.timing().optional())
                .findFirst()
                .orElseThrow()
                .id();
        plans.apply(SURGEON, child, "sdr", new Change.Add(optional), "needed", 3);
        assertThat(now()).isNotEqualTo(alone);
        assertThat(plans.byPathAlone(SURGEON, child, "sdr")).contains(alone);
        assertThat(alone.stage("operation").orElseThrow().start()).isEqualTo(SURGERY);
        assertThat(plans.byPathAlone(SURGEON, child, "itb")).isEmpty();

        plans.beginChosen(SURGEON, child, "sdr", LocalDate.of(2026, 3, 12), "chosen anew");
        assertThat(plans.byPathAlone(SURGEON, child, "sdr")).contains(now());
    }

    @Test
    void refusesDaysAwayThatAreOverTooManyOrTooFarAhead() {
        begin();
        var today = LocalDate.of(2026, 3, 12);
        for (var days : List.of(
                new Span(today.minusDays(5), today.minusDays(1)),
                new Span(today, today.plusDays(366)),
                new Span(today.plusYears(2), today.plusYears(2).plusDays(1)))) {
            assertThatThrownBy(() -> plans.away(SURGEON, child, days, "too much of it", 2))
                    .isInstanceOf(Invalid.class);
        }
    }

    @Test
    void nothingIsTakenBackTwiceOrByWhoSawAnOlderPlan() {
        begin();
        plans.undo(SURGEON, child, 2, "not done after all", 2);
        assertThatThrownBy(() -> plans.undo(SURGEON, child, 2, "once more", 3)).isInstanceOf(Invalid.class);
        assertThatThrownBy(() -> plans.undo(SURGEON, child, 1, "too late", 2)).isInstanceOf(Overtaken.class);
    }

    @Test
    void aStageThatIsThereOnlyIfNeededComesAndGoes() {
        begin();
        var optional = now().template().stages().stream()
                .filter(stage -> stage.timing().optional())
                .findFirst()
                .orElseThrow()
                .id();
        assertThat(stages()).doesNotContain(optional);
        plans.apply(SURGEON, child, "sdr", new Change.Add(optional), "the team found it needed", 2);
        assertThat(stages()).contains(optional);
        plans.apply(SURGEON, child, "sdr", new Change.Skip(optional), "not needed after all", 3);
        assertThat(stages()).doesNotContain(optional);
        assertThatThrownBy(() -> plans.apply(SURGEON, child, "sdr", new Change.Skip(optional), "again", 4))
                .isInstanceOf(Invalid.class);
    }

    @Test
    void aGapOfTheChildsOwnMovesTheDateAndSaysWhatItCountsFrom() {
        begin();
        var longer = new Template.After(
                Optional.empty(),
                Template.Edge.START,
                Period.ofWeeks(7),
                Optional.of(Period.ofWeeks(8)),
                Optional.of(Period.ofWeeks(9)));
        plans.apply(SURGEON, child, "sdr", new Change.OwnRule("six-week-check", 0, longer), "slow to heal", 2);
        var check = now().stage("six-week-check").orElseThrow();
        assertThat(check.start()).isEqualTo(SURGERY.plusWeeks(8));
        assertThat(plans.why(now(), check).en()).startsWith("8 weeks after the first day of “Surgery”");
        plans.apply(SURGEON, child, "sdr", new Change.SharedRule("six-week-check", 0), "healed well", 3);
        assertThat(now().stage("six-week-check").orElseThrow().start()).isEqualTo(SURGERY.plusWeeks(6));
    }

    @Test
    void aGapThatLeavesAStageNoDayIsRefusedInWordsWithAWayOut() {
        begin();
        var never = new Template.After(
                Optional.empty(),
                Template.Edge.START,
                Period.ofDays(39),
                Optional.of(Period.ofDays(39)),
                Optional.of(Period.ofDays(40)));
        // 39 and 40 days after that Tuesday lie on a weekend
        var refused = catchThrowableOfType(
                Invalid.class,
                () -> plans.preview(SURGEON, child, "sdr", new Change.OwnRule("six-week-check", 0, never)));
        var says = words.say(Language.EN, refused.problems().get(0));
        assertThat(says)
                .contains(
                        "No day fits for “Six-week check”",
                        "a day when it can be had",
                        "Ways out: accept for this child");
    }

    @Test
    void refusesAnEndThatLiesAheadOrIsNotOneOfTheStage() {
        plans.begin(SURGEON, child, "itb", Plans.Beginning.INSTEAD, LocalDate.of(2025, 12, 1), "referred");
        var ahead = new Change.End("test-dose", "helped", LocalDate.of(2026, 3, 13));
        assertThatThrownBy(() -> plans.apply(SURGEON, child, "itb", ahead, "reason", 1))
                .isInstanceOf(Invalid.class);
        var unknown = new Change.End("test-dose", "flew", LocalDate.of(2026, 3, 10));
        assertThatThrownBy(() -> plans.apply(SURGEON, child, "itb", unknown, "reason", 1))
                .isInstanceOf(Invalid.class);
    }

    @Test
    void aPathThatWasChosenBeginsWhereItsTestsAreDone() {
        plans.beginChosen(SURGEON, child, "sdr", LocalDate.of(2026, 3, 2), "the family chose it");
        var first = now().stages().get(0);
        assertThat(first.stage().id()).isEqualTo(now().template().chosenAt().orElseThrow());
        assertThat(first.start()).isEqualTo(LocalDate.of(2026, 3, 2));
        assertThat(now().clashes()).isEmpty();
        assertThat(plans.decisions(SURGEON, child).get(0).name())
                .isEqualTo(now().template().name());
    }

    private void bornOn(LocalDate day, Optional<Integer> level) {
        given(children.get(SURGEON, child))
                .willReturn(new Child(child, ChildData.plain(Names.plain("Ada", "Test"), day, level, 1), 1));
    }

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate ELSEWHERE = LocalDate.of(2026, 2, 16);
    private static final LocalDate CAME = LocalDate.of(2026, 3, 9);

    private static Start atHome(Map<String, LocalDate> before) {
        return new Start("sdr", Beginning.INSTEAD, Optional.of("home-weeks"), CAME, before);
    }

    @Test
    void aChildWhoWasOperatedOnElsewhereBeginsInTheMiddleAndItsCareRulesCountFromTheOperation() {
        bornOn(LocalDate.of(2019, 5, 2), Optional.of(2));
        var start = atHome(Map.of("operation", ELSEWHERE));
        var would = plans.outlook(SURGEON, child, start);
        assertThat(plans.plans(SURGEON, child)).as("nothing is saved").isEmpty();
        plans.begin(SURGEON, child, start, "operated on in another hospital", 0);
        assertThat(now()).isEqualTo(would.plan());

        var operation = now().stage("operation").orElseThrow();
        assertThat(operation.start()).isEqualTo(ELSEWHERE);
        assertThat(operation.isDoneBefore()).isTrue();
        assertThat(operation.why().outside()).isFalse();
        assertThat(plans.why(now(), operation).en()).doesNotContain("usual gap");
        assertThat(now().stages()).first().isEqualTo(operation);
        assertThat(now().before())
                .extracting(Template.Stage::id)
                .contains("referral", "assessment", "getting-ready", "hospital")
                .doesNotContain("operation", "home-weeks");
        assertThat(now().now().orElseThrow().stage().id()).isEqualTo("home-weeks");
        assertThat(now().stage("six-week-check").orElseThrow().start()).isEqualTo(ELSEWHERE.plusWeeks(6));
        assertThat(now().clashes()).isEmpty();
        assertThat(plans.precautions(SURGEON, child, TODAY))
                .extracting(care -> care.rule().tag())
                .contains("passive-trunk-twist");
        assertThat(plans.decisions(SURGEON, child))
                .extracting(Plans.Decision::kind)
                .containsExactly(Plans.Kind.FIXED, Plans.Kind.BEGUN);
        assertThat(heard.changes)
                .filteredOn(change -> change.child().equals(child))
                .as("one piece of news")
                .hasSize(1);
        assertThat(plans.byPathAlone(SURGEON, child, "sdr")).contains(now());
    }

    @Test
    void theDayOfWhatWasDoneBeforeCanBeGivenLaterAndLiesBeforeThePathBegan() {
        var start = atHome(Map.of("operation", ELSEWHERE));
        plans.begin(SURGEON, child, start, "operated on in another hospital", 0);
        assertThat(now().before()).extracting(Template.Stage::id).contains("hospital");
        var ahead = new Change.Fix("hospital", TODAY.plusDays(1));
        assertThatThrownBy(() -> plans.preview(SURGEON, child, "sdr", ahead)).isInstanceOf(Invalid.class);
        var tooEarly = new Change.Fix("hospital", ELSEWHERE.minusDays(1));
        assertThatThrownBy(() -> plans.preview(SURGEON, child, "sdr", tooEarly)).isInstanceOf(Invalid.class);
        var day = ELSEWHERE.plusDays(1);
        plans.apply(SURGEON, child, "sdr", new Change.Fix("hospital", day), "their letter says so", 2);
        assertThat(now().stage("hospital").orElseThrow().start()).isEqualTo(day);
        assertThat(now().before()).extracting(Template.Stage::id).doesNotContain("hospital");
        plans.undo(SURGEON, child, 3, "another child's letter", 3);
        assertThat(now().stage("hospital")).isEmpty();
    }

    @Test
    void refusesABeginningWhoseDaysCannotBeInThisOrder() {
        for (var before : List.of(
                Map.of("operation", CAME.plusDays(1)),
                Map.of("operation", TODAY.minusYears(20).minusDays(1)),
                Map.of("getting-ready", ELSEWHERE, "operation", ELSEWHERE.minusDays(1)))) {
            var refused = catchThrowableOfType(
                    Invalid.class, () -> plans.begin(SURGEON, child, atHome(before), "operated elsewhere", 0));
            assertThat(refused.problems()).extracting(Problem::field).containsExactly("before/operation");
        }
        for (var before : List.of("six-week-check", "nowhere")) {
            var start = atHome(Map.of("operation", ELSEWHERE, before, ELSEWHERE));
            assertThatThrownBy(() -> plans.outlook(SURGEON, child, start)).isInstanceOf(Invalid.class);
        }
        var nowhere = new Start("sdr", Beginning.INSTEAD, Optional.of("nowhere"), CAME, Map.of());
        assertThatThrownBy(() -> plans.outlook(SURGEON, child, nowhere)).isInstanceOf(Invalid.class);
        assertThat(plans.plans(SURGEON, child)).isEmpty();
        begin();
        var late = atHome(Map.of("operation", ELSEWHERE));
        assertThatThrownBy(() -> plans.begin(SURGEON, child, late, "operated elsewhere", 0))
                .isInstanceOf(Overtaken.class);
    }

    /** A check six weeks after an operation of which no day is known would fall on a day that means nothing. */
    @Test
    void asksForTheDayFromWhichALaterStageCounts() {
        var refused = catchThrowableOfType(
                Invalid.class, () -> plans.begin(SURGEON, child, atHome(Map.of()), "operated elsewhere", 0));
        assertThat(refused.problems()).extracting(Problem::field).containsExactly("before/operation");
        assertThat(words.say(Language.EN, refused.problems().get(0))).contains("“Surgery”", "“Six-week check”");
    }

    @Test
    void aPathThatWasChosenNeedsNoDayOfWhatWasDoneBefore() {
        assertThat(plans.pathways())
                .filteredOn(path -> path.chosenAt().isPresent())
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path.neededBefore(path.chosenAt().orElseThrow(), Set.of()))
                        .isEmpty());
    }

    @Test
    void aWayBackLeadsToAStageThatWasDoneBeforeThePathBegan() {
        plans.beginChosen(SURGEON, child, "sdr", LocalDate.of(2026, 3, 2), "the family chose it");
        assertThat(now().before()).extracting(Template.Stage::id).contains("team-meeting");
        plans.apply(SURGEON, child, "sdr", new Change.End("funding", "refused", TODAY), "not paid", 1);
        assertThat(now().stage("team-meeting").orElseThrow().start()).isEqualTo(TODAY);
        assertThat(now().before())
                .extracting(Template.Stage::id)
                .contains("assessment")
                .doesNotContain("team-meeting");
    }

    @Test
    void saysWhatLeavesAndWhatTakingBackWouldBringBeforeAnythingIsSaved() {
        plans.begin(SURGEON, child, "itb", Plans.Beginning.INSTEAD, LocalDate.of(2025, 12, 1), "referred");
        var end = new Change.End("test-dose", "no-response", LocalDate.of(2026, 3, 10));
        var leaving = plans.preview(SURGEON, child, "itb", end).effect().leaving();
        assertThat(leaving).extracting(Bilingual::en).contains("Surgery");
        plans.apply(SURGEON, child, "itb", end, "no response", 1);
        assertThat(plans.effectOfUndo(SURGEON, child, 2).coming()).isEqualTo(leaving);
        assertThat(plans.effectOfUndo(SURGEON, child, 1).leaving()).isNotEmpty();
        assertThat(now().over()).isPresent();
    }
}
