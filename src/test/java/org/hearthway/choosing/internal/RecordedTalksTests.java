package org.hearthway.choosing.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.audit.WhatChanged;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Names;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Decision;
import org.hearthway.choosing.FactsEntry;
import org.hearthway.choosing.FactsEntry.Difference;
import org.hearthway.choosing.Talk;
import org.hearthway.choosing.engine.Line;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Template;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class RecordedTalksTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);
    private static final Viewer.Person THERAPIST = People.with(Role.THERAPIST);

    @Autowired
    private Choosing choosing;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Plans plans;

    @Autowired
    private Gate gate;

    @Autowired
    private WhatChanged changed;

    @Autowired
    private SettableClock clock;

    @Autowired
    private Words words;

    private ChildId child(int years, Optional<Integer> level) {
        return register.enter(
                People.with(Role.ADMINISTRATOR),
                ChildData.plain(Names.plain("Tamsin", "Orbell"), TODAY.minusYears(years), level, 2));
    }

    private static Answer.Data is(String choice) {
        return new Answer.Data(Set.of(choice), "");
    }

    private static Decision.Data decided(String path) {
        return new Decision.Data(
                Optional.of(path), TODAY.minusDays(2), "Mother, surgeon, therapist", "What the family hopes for");
    }

    private static List<Line> lines(Talk talk, String path) {
        return talk.paths().stream()
                .filter(each -> each.guide().id().equals(path))
                .flatMap(each -> each.lines().stream())
                .toList();
    }

    private static List<Mark> marks(Talk talk, String path, String criterion) {
        return lines(talk, path).stream()
                .filter(line -> line.criterion().equals(criterion))
                .map(Line::mark)
                .toList();
    }

    @Test
    void aFactIsEnteredOnceAndSpeaksOnEveryPathThatAsksForIt() {
        var child = child(5, Optional.of(3));
        choosing.enter(THERAPIST, child, Map.of("walking", is("walker"), "tone", is("spastic")), 0);
        var talk = choosing.talk(PHYSICIAN, child);
        assertThat(marks(talk, "sdr", "walking")).containsExactly(Mark.FOR);
        assertThat(marks(talk, "itb", "walking")).containsExactly(Mark.TALK);
        assertThat(marks(talk, "dbs", "tone")).containsExactly(Mark.AGAINST);
        assertThat(marks(talk, "sdr", "level")).as("read from the child").containsExactly(Mark.FOR);
        assertThat(talk.answers().get("walking").by()).isEqualTo(THERAPIST.account());
        assertThat(talk.version()).isEqualTo(1);
    }

    @Test
    void aFactTakenBackIsUnknownAgainAndItsLineAlone() {
        var child = child(9, Optional.of(4));
        var known =
                Map.of("tone", is("dystonic"), "cause", is("genetic"), "imaging", is("normal"), "birth", is("usual"));
        choosing.enter(THERAPIST, child, known, 0);
        var before = choosing.talk(PHYSICIAN, child);
        choosing.enter(PHYSICIAN, child, Map.of("imaging", Answer.Data.NONE), 1);
        var after = choosing.talk(PHYSICIAN, child);
        assertThat(marks(before, "dbs", "imaging")).containsExactly(Mark.FOR);
        assertThat(marks(after, "dbs", "imaging")).containsExactly(Mark.MISSING);
        for (var path : after.paths()) {
            var id = path.guide().id();
            assertThat(lines(after, id))
                    .filteredOn(line -> !line.criterion().equals("imaging"))
                    .containsExactlyElementsOf(lines(before, id).stream()
                            .filter(line -> !line.criterion().equals("imaging"))
                            .toList());
        }
        assertThat(after.answers().get("tone").by()).isEqualTo(THERAPIST.account());
        assertThat(after.answers().get("imaging").by()).isEqualTo(PHYSICIAN.account());
    }

    @Test
    void whatIsTriedOutIsNotKept() {
        var child = child(5, Optional.empty());
        var tried = choosing.talkIf(PHYSICIAN, child, Map.of("walking", Set.of("none")));
        assertThat(marks(tried, "itb", "walking")).containsExactly(Mark.FOR);
        assertThat(marks(choosing.talk(PHYSICIAN, child), "itb", "walking")).containsExactly(Mark.MISSING);
    }

    @Test
    void thePathsStandInOneOrderWhateverTheFactsAre() {
        var child = child(5, Optional.of(5));
        for (var choices : List.of(
                Map.<String, Set<String>>of(),
                Map.of("tone", Set.of("dystonic"), "cause", Set.of("genetic")),
                Map.of("walking", Set.of("none"), "tone", Set.of("mixed")))) {
            assertThat(choosing.talkIf(PHYSICIAN, child, choices).paths())
                    .extracting(path -> path.guide().id())
                    .containsExactly("sdr", "itb", "dbs", "rehab", "followup");
        }
    }

    @Test
    void ofTwoWhoEnterAtOnceTheSecondIsTold() {
        var child = child(5, Optional.of(3));
        choosing.enter(THERAPIST, child, Map.of("tone", is("spastic")), 0);
        assertThatThrownBy(() -> choosing.enter(PHYSICIAN, child, Map.of("hips", is("in-place")), 0))
                .isInstanceOf(Overtaken.class);
        assertThat(choosing.talk(PHYSICIAN, child).answers()).containsOnlyKeys("tone");
    }

    @Test
    void everyVersionStaysReadableWithWhoEnteredWhatAndWhen() {
        var child = child(5, Optional.of(3));
        choosing.enter(THERAPIST, child, Map.of("tone", is("spastic"), "walking", is("walker")), 0);
        clock.advance(Duration.ofDays(1));
        var mixed = new Answer.Data(Set.of("mixed"), "seen at the walk film");
        choosing.enter(PHYSICIAN, child, Map.of("tone", mixed, "hips", is("in-place")), 1);
        clock.advance(Duration.ofDays(1));
        choosing.enter(THERAPIST, child, Map.of("walking", Answer.Data.NONE), 2);

        var entries = choosing.entries(PHYSICIAN, child);
        assertThat(entries).extracting(FactsEntry::version).containsExactly(3L, 2L, 1L);
        assertThat(entries)
                .extracting(FactsEntry::by)
                .containsExactly(THERAPIST.account(), PHYSICIAN.account(), THERAPIST.account());
        assertThat(entries.get(0).at()).isEqualTo(clock.instant());
        assertThat(entries.get(2).sinceNothing()).extracting(Difference::fact).containsExactly("tone", "walking");
        assertThat(entries.get(1).since(entries.get(2)))
                .containsExactly(
                        new Difference("hips", Answer.Data.NONE, is("in-place")),
                        new Difference("tone", is("spastic"), mixed));
        assertThat(entries.get(0).since(entries.get(2)))
                .as("any two")
                .extracting(Difference::fact)
                .containsExactly("hips", "tone", "walking");
        assertThat(entries.get(0).since(entries.get(0))).isEmpty();
    }

    @Test
    void nothingChangedIsNothingEntered() {
        var child = child(5, Optional.of(3));
        choosing.enter(THERAPIST, child, Map.of("tone", is("spastic")), 0);
        choosing.enter(PHYSICIAN, child, Map.of("tone", is("spastic"), "hips", Answer.Data.NONE), 1);
        var talk = choosing.talk(PHYSICIAN, child);
        assertThat(talk.version()).isEqualTo(1);
        assertThat(talk.answers().get("tone").by()).isEqualTo(THERAPIST.account());
    }

    @Test
    void aNoteAloneLeavesTheFactUnknown() {
        var child = child(5, Optional.of(3));
        choosing.enter(THERAPIST, child, Map.of("hips", new Answer.Data(Set.of(), " X-ray is booked ")), 0);
        var talk = choosing.talk(PHYSICIAN, child);
        assertThat(talk.answers().get("hips").data().note()).isEqualTo("X-ray is booked");
        assertThat(marks(talk, "sdr", "hips")).containsExactly(Mark.MISSING);
    }

    @Test
    void refusesWhatCannotBeTakenAndSaysAllOfIt() {
        var child = child(5, Optional.of(3));
        var wrong = Map.of(
                "gmfcs",
                is("2"),
                "hips",
                is("perfect"),
                "spine",
                new Answer.Data(Set.of("straight", "fused"), ""),
                "tone",
                new Answer.Data(Set.of("spastic"), "n".repeat(161)));
        var refused = catchThrowableOfType(Invalid.class, () -> choosing.enter(THERAPIST, child, wrong, 0));
        said(refused, "gmfcs", "hips", "spine", "tone");
        var decision = new Decision.Data(Optional.of("flying"), TODAY.plusDays(1), " ", "no");
        said(
                catchThrowableOfType(Invalid.class, () -> choosing.decide(PHYSICIAN, child, decision, 0)),
                "path",
                "day",
                "present",
                "reason");
        var unborn = new Decision.Data(Optional.empty(), TODAY.minusYears(5).minusDays(1), "Mother", "Not now");
        said(catchThrowableOfType(Invalid.class, () -> choosing.decide(PHYSICIAN, child, unborn, 0)), "day");
        assertThat(choosing.talk(PHYSICIAN, child).version()).isZero();
        assertThat(choosing.decisions(PHYSICIAN, child)).isEmpty();
    }

    private void said(Invalid refused, String... fields) {
        assertThat(refused.problems()).extracting(Problem::field).containsExactly(fields);
        for (var language : Language.values()) {
            assertThat(refused.problems())
                    .allSatisfy(problem -> assertThat(words.say(language, problem))
                            .isNotBlank()
                            .doesNotContain("{"));
        }
    }

    @Test
    void aDecisionBeginsThePathOnItsDay() {
        var child = child(5, Optional.of(3));
        choosing.decide(PHYSICIAN, child, decided("sdr"), 0);
        var plan =
                plans.plans(PHYSICIAN, child).stream().findFirst().orElseThrow().plan();
        assertThat(plan.template().id()).isEqualTo("sdr");
        assertThat(plan.stages().get(0).start()).isEqualTo(TODAY.minusDays(2));
        var kept = choosing.decisions(THERAPIST, child).get(0);
        assertThat(kept.data()).isEqualTo(decided("sdr"));
        assertThat(kept.by()).isEqualTo(PHYSICIAN.account());
        assertThat(kept.name().orElseThrow().en()).contains("SDR");
    }

    @Test
    void aPathThatTheChildIsOnGoesOnAsItIs() {
        var child = child(5, Optional.of(3));
        plans.begin(PHYSICIAN, child, "sdr", Plans.Beginning.INSTEAD, TODAY.minusDays(60), "To be looked at");
        choosing.decide(PHYSICIAN, child, decided("sdr"), 0);
        assertThat(plans.decisions(PHYSICIAN, child)).hasSize(1);
        choosing.decide(PHYSICIAN, child, decided("itb"), 1);
        assertThat(plans.plans(PHYSICIAN, child).stream()
                        .findFirst()
                        .orElseThrow()
                        .plan()
                        .template()
                        .id())
                .isEqualTo("itb");
    }

    @Test
    void noneNowBeginsNothingAndEarlierDecisionsStayReadable() {
        var child = child(5, Optional.of(3));
        var none = new Decision.Data(Optional.empty(), TODAY, "Mother", "They want to wait for summer");
        choosing.decide(PHYSICIAN, child, none, 0);
        assertThat(plans.plans(PHYSICIAN, child).stream().findFirst()).isEmpty();
        choosing.decide(PHYSICIAN, child, decided("itb"), 1);
        assertThat(choosing.decisions(PHYSICIAN, child))
                .extracting(decision -> decision.data().path())
                .containsExactly(Optional.of("itb"), Optional.empty());
        assertThatThrownBy(() -> choosing.decide(PHYSICIAN, child, none, 1)).isInstanceOf(Overtaken.class);
        assertThat(choosing.decisions(PHYSICIAN, child)).hasSize(2);
    }

    /** The path refuses a day of more than 20 years ago; the decision goes with it. */
    @Test
    void whenThePathCannotBeginNothingIsKept() {
        var child = child(24, Optional.of(3));
        var long_ago =
                new Decision.Data(Optional.of("itb"), TODAY.minusYears(21), "Mother, surgeon", "As was said then");
        assertThatThrownBy(() -> choosing.decide(PHYSICIAN, child, long_ago, 0)).isInstanceOf(Invalid.class);
        assertThat(choosing.decisions(PHYSICIAN, child)).isEmpty();
        assertThat(plans.plans(PHYSICIAN, child).stream().findFirst()).isEmpty();
    }

    @Test
    void aDecisionChoosesOnlyWhatCanBegin() {
        assertThat(choosing.ways())
                .extracting(Choosing.Way::id)
                .containsExactlyInAnyOrderElementsOf(
                        plans.pathways().stream().map(Template::id).toList())
                .startsWith("sdr", "itb");
    }

    @Test
    void aTherapistEntersFactsAndDecidesNothing() {
        var child = child(5, Optional.of(3));
        choosing.enter(THERAPIST, child, Map.of("tone", is("spastic")), 0);
        assertThatThrownBy(() -> choosing.decide(THERAPIST, child, decided("sdr"), 0))
                .isInstanceOf(NotAvailable.class);
        for (var role : List.of(Role.COORDINATOR, Role.ADMINISTRATOR)) {
            assertThatThrownBy(() -> choosing.talk(People.with(role), child)).isInstanceOf(NotAvailable.class);
        }
    }

    @Test
    void theFamilySeesNothingOfIt() {
        var child = child(5, Optional.of(3));
        var parent = Children.caregiver(households, child, Households.Reach.FULL);
        choosing.enter(THERAPIST, child, Map.of("tone", is("spastic")), 0);
        choosing.decide(PHYSICIAN, child, new Decision.Data(Optional.empty(), TODAY, "Mother", "They want to wait"), 0);
        assertThatThrownBy(() -> choosing.talk(parent, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> choosing.decisions(parent, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> choosing.entries(parent, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> choosing.handout(parent, child)).isInstanceOf(NotAvailable.class);
        assertThat(gate.allows(parent, Action.SEE_CHOOSING, child)).isFalse();
        assertThat(changed.since(parent, child, HearthwayTest.START.minusSeconds(60)))
                .isEmpty();
    }
}
