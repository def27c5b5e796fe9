package org.hearthway.task.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.reminder.Outbox;
import org.hearthway.task.Assignee;
import org.hearthway.task.StageTasks;
import org.hearthway.task.StageTasks.Asked;
import org.hearthway.task.Task;
import org.hearthway.task.TaskId;
import org.hearthway.task.Tasks;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.OnPath;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A path began on Thursday, March 12, 2026, the clinic's today; its first visit asks two things, in 2 and in 4 weeks. */
@HearthwayTest
class StageTasksTests {

    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);
    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final String FIRST = "sdr/referral";
    private static final String SECOND = "sdr/assessment";

    @Autowired
    private StageTasks stages;

    @Autowired
    private Tasks tasks;

    @Autowired
    private Plans plans;

    @Autowired
    private SignOff signOff;

    @Autowired
    private Accounts accounts;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Standings standings;

    @Autowired
    private Outbox outbox;

    @Autowired
    private SettableClock clock;

    private ChildId child = ChildId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);

    @BeforeEach
    void aChildWhosePathBegan() {
        OnPath.accept(signOff, plans, "sdr");
        child = Children.enter(register);
        var account = accounts.invite(
                        People.with(Role.ADMINISTRATOR),
                        new NewAccount(
                                "Pat Somebody",
                                People.freshEmail(),
                                "",
                                Set.of(Role.CAREGIVER),
                                Language.EN,
                                People.ZONE))
                .account();
        households.link(People.with(Role.ADMINISTRATOR), child, account, Reach.FULL);
        parent = People.as(account, Role.CAREGIVER);
        new OnPath(plans, child).begin("sdr", Plans.Beginning.INSTEAD, TODAY);
    }

    private List<Asked> asked(String stage) {
        return stages.of(parent, child).stream()
                .filter(one -> one.stage().equals(stage))
                .toList();
    }

    private void decide(Change change) {
        new OnPath(plans, child).decide("sdr", change);
    }

    private long version() {
        return new OnPath(plans, child).version();
    }

    @Test
    void stagesAskByThemselvesEachThingByItsDay() {
        assertThat(asked(FIRST))
                .extracting(one -> one.due().orElseThrow())
                .containsExactly(TODAY.plusWeeks(2), TODAY.plusWeeks(4));
        assertThat(asked(FIRST)).allMatch(one -> one.task().isEmpty());
        assertThat(tasks.forFamily(parent, child)).isEmpty();
    }

    @Test
    void theDaysMoveWithTheStageAndMoveBackWhenThatIsTakenBack() {
        var before = asked(SECOND);
        var moved = TODAY.plusDays(46);
        decide(new Change.SetByHand("assessment", moved));
        assertThat(asked(SECOND)).allSatisfy(one -> assertThat(one.due()).contains(moved.plusWeeks(4)));
        plans.undo(PHYSICIAN, child, 2, "a mistake", 2);
        assertThat(asked(SECOND)).isEqualTo(before);
    }

    @Test
    void whatAStageAsksLeavesWithTheStage() {
        decide(new Change.Skip("assessment"));
        assertThat(asked(SECOND)).isEmpty();
        assertThat(asked(FIRST)).hasSize(2);
        decide(new Change.End("family-decision", "declined", TODAY));
        assertThat(stages.of(parent, child)).isEmpty();
        assertThatThrownBy(() -> stages.tick(parent, child, FIRST, 0)).isInstanceOf(Overtaken.class);
    }

    @Test
    void aTickIsKeptOnceSeenByTheTeamAndTakenBackForAShortWhile() {
        stages.tick(parent, child, FIRST, 1);
        stages.tick(parent, child, FIRST, 1);
        assertThat(asked(FIRST)).extracting(Asked::isDone).containsExactly(false, true);
        var kept = tasks.of(COORDINATOR, child);
        assertThat(kept).singleElement().satisfies(task -> {
            assertThat(task.isAskedByItsStage()).isTrue();
            assertThat(task.due()).isEqualTo(TODAY.plusWeeks(4));
            assertThat(task.end()).hasValueSatisfying(end -> {
                assertThat(end.ticked()).isTrue();
                assertThat(end.by()).isEqualTo(parent.account());
            });
        });

        tasks.takeBack(parent, kept.get(0).id(), 1);
        assertThat(asked(FIRST)).noneMatch(Asked::isDone);
        // it goes on as the path's, not as something that somebody gave
        assertThat(tasks.of(COORDINATOR, child)).isEmpty();
        assertThat(tasks.forFamily(parent, child)).isEmpty();
        assertThat(outbox.of(COORDINATOR, child)).isEmpty();
        stages.tick(parent, child, FIRST, 1);
        assertThat(tasks.of(COORDINATOR, child)).hasSize(1);
        clock.advance(Tasks.UNDO.plusSeconds(1));
        assertThatThrownBy(() -> tasks.takeBack(parent, kept.get(0).id(), 3)).isInstanceOf(Overtaken.class);
    }

    @Test
    void whatTheTeamGaveInTheSameWordsStandsInItsPlaceWithItsOwnDay() {
        var says = asked(FIRST).get(0).says();
        var due = TODAY.plusDays(5);
        var given = tasks.give(
                COORDINATOR,
                child,
                new Tasks.Asked(new Assignee.Family(), says.en(), says.es(), due, Optional.of(FIRST)));
        assertThat(asked(FIRST).get(0).due()).contains(due);
        stages.tick(parent, child, FIRST, 0);
        assertThat(tasks.of(COORDINATOR, child)).extracting(Task::id).containsExactly(given);
        tasks.takeBack(parent, given, 2);
        tasks.end(COORDINATOR, given, Task.Outcome.NOT_NEEDED, "we have it", 3);
        assertThat(asked(FIRST)).extracting(Asked::place).containsExactly(1);
    }

    @Test
    void aPathThatBeginsAnewAsksAnew() {
        stages.tick(parent, child, FIRST, 0);
        decide(new Change.SetByHand("assessment", TODAY.plusDays(46)));
        assertThat(asked(FIRST).get(0).isDone()).isTrue();
        clock.advance(Duration.ofDays(200));
        plans.begin(PHYSICIAN, child, "sdr", Plans.Beginning.INSTEAD, TODAY.plusDays(200), "once more");
        assertThat(asked(FIRST)).noneMatch(Asked::isDone);
        stages.tick(parent, child, FIRST, 0);
        assertThat(asked(FIRST).get(0).isDone()).isTrue();
    }

    @Test
    void whatWasDoneBeforeThePathBeganHereAsksNothing() {
        var start = new Plans.Start(
                "sdr",
                Plans.Beginning.INSTEAD,
                Optional.of("team-meeting"),
                TODAY,
                Map.of("assessment", TODAY.minusWeeks(5)));
        plans.begin(PHYSICIAN, child, start, "tested elsewhere", version());
        assertThat(asked(FIRST)).isEmpty();
        assertThat(asked(SECOND)).isEmpty();
        assertThat(asked("sdr/team-meeting")).isNotEmpty();
    }

    /** A path that asks for more tests goes back to the first visit of the tests, to which two tasks belong. */
    private void goBackToTheTests() {
        decide(new Change.End("team-meeting", "more-tests", today()));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), People.ZONE);
    }

    @Test
    void aTickMadeAheadOfItsStageIsOfTheRunThatItWasMadeIn() {
        stages.tick(parent, child, SECOND, 0);
        assertThat(asked(SECOND).get(0).isDone()).isTrue();
        // the stage moves and begins, and is still the one that was ticked for
        decide(new Change.SetByHand("assessment", TODAY.plusDays(46)));
        clock.advance(Duration.ofDays(60));
        decide(new Change.Fix("assessment", TODAY.plusDays(50)));
        assertThat(asked(SECOND).get(0).isDone()).isTrue();

        var old = asked(SECOND).get(0).task().orElseThrow();
        goBackToTheTests();
        assertThat(asked(SECOND)).isNotEmpty().noneMatch(Asked::isDone);
        assertThat(tasks.of(COORDINATOR, child)).extracting(Task::id).containsExactly(old.id());

        clock.advance(Duration.ofMinutes(1));
        stages.tick(parent, child, SECOND, 0);
        assertThat(asked(SECOND).get(0).isDone()).isTrue();
        assertThat(tasks.of(COORDINATOR, child))
                .hasSize(2)
                .allMatch(task -> task.end().isPresent());
    }

    @Test
    void aWayBackThatIsTakenBackLeavesTheTickAsItWas() {
        stages.tick(parent, child, FIRST, 0);
        stages.tick(parent, child, SECOND, 0);
        clock.advance(Duration.ofDays(60));
        goBackToTheTests();
        assertThat(asked(SECOND)).noneMatch(Asked::isDone);
        assertThat(asked(FIRST).get(0).isDone())
                .as("a stage in front of the way back goes on as it was")
                .isTrue();
        plans.undo(PHYSICIAN, child, version(), "a mistake", version());
        assertThat(asked(SECOND).get(0).isDone()).isTrue();
    }

    @Test
    void nothingIsAskedInQuietAndALateTickIsKept() {
        standings.say(COORDINATOR, child, new Standings.Saying(Status.AWAY, "In hospital", Optional.empty()), 0);
        assertThat(stages.of(parent, child)).isEmpty();
        stages.tick(parent, child, FIRST, 0);
        assertThat(tasks.of(COORDINATOR, child)).hasSize(1);
    }

    @Test
    void whoMayOnlyLookDoesNotTick() {
        var looking = Children.caregiver(households, child, Reach.VIEW_ONLY);
        assertThat(stages.of(looking, child)).isNotEmpty();
        assertThatThrownBy(() -> stages.tick(looking, child, FIRST, 0)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void aGivenTaskMovesWithItsStageAndSoDoesItsMail() {
        give(SECOND, stage("assessment").plusDays(3));
        decide(new Change.SetByHand("assessment", TODAY.plusDays(46)));
        assertThat(tasks.forFamily(parent, child)).extracting(Task::due).containsExactly(TODAY.plusDays(49));
        assertThat(outbox.of(COORDINATOR, child))
                .filteredOn(mail -> mail.state() == Outbox.State.PLANNED)
                .extracting(Outbox.Message::subject)
                .containsExactly("A small reminder for Thursday, April 30");
    }

    @Test
    void aGivenTaskRestsWhileItsStageIsOffThePlan() {
        var given = give(SECOND, stage("assessment").plusDays(3));
        var due = tasks.forFamily(parent, child).get(0).due();
        decide(new Change.Skip("assessment"));
        assertThat(tasks.forFamily(parent, child)).isEmpty();
        assertThat(tasks.of(COORDINATOR, child)).noneMatch(Task::isOnPlan);
        assertThat(outbox.of(COORDINATOR, child)).noneMatch(mail -> mail.state() == Outbox.State.PLANNED);
        decide(new Change.Add("assessment"));
        assertThat(tasks.forFamily(parent, child)).singleElement().satisfies(task -> {
            assertThat(task.id()).isEqualTo(given);
            assertThat(task.due()).isEqualTo(due);
        });
    }

    private LocalDate stage(String id) {
        return new OnPath(plans, child).plan("sdr").stage(id).orElseThrow().start();
    }

    private TaskId give(String stage, LocalDate due) {
        return tasks.give(
                COORDINATOR,
                child,
                new Tasks.Asked(new Assignee.Family(), "Bring the shoes.", "", due, Optional.of(stage)));
    }
}
