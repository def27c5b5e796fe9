package org.hearthway.task.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.audit.WhatChanged;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Helpers;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.path.Plans;
import org.hearthway.reminder.Outbox;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.Task.Outcome;
import org.hearthway.task.TaskId;
import org.hearthway.task.Tasks;
import org.hearthway.task.Tasks.Asked;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.Helping;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.Team;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The clinic's clock stands at Thursday, March 12, 2026, 10:00 in New York. */
@HearthwayTest
class GivenTasksTests {

    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate TUESDAY = LocalDate.of(2026, 3, 17);
    private static final Assignee FAMILY = new Assignee.Family();

    @Autowired
    private Tasks tasks;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Helpers helpers;

    @Autowired
    private Standings standings;

    @Autowired
    private Plans plans;

    @Autowired
    private Needs needs;

    @Autowired
    private Outbox outbox;

    @Autowired
    private WhatChanged changes;

    @Autowired
    private SettableClock clock;

    @Autowired
    private JdbcClient db;

    private ChildId child = ChildId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);

    @BeforeEach
    void aChildWithOneParent() {
        child = Children.enter(register);
        parent = caregiver(Language.EN, Reach.FULL);
    }

    private Viewer.Person caregiver(Language language, Reach reach) {
        var account = accounts.invite(
                        ADMINISTRATOR,
                        new NewAccount(
                                "Pat Somebody", People.freshEmail(), "", Set.of(Role.CAREGIVER), language, People.ZONE))
                .account();
        households.link(ADMINISTRATOR, child, account, reach);
        return new Viewer.Person(account, "Pat Somebody", Set.of(Role.CAREGIVER), language, People.ZONE);
    }

    private static Asked asked(Assignee to, LocalDate due) {
        return new Asked(to, "Send us the film.", "", due, Optional.empty());
    }

    private TaskId give(Assignee to, LocalDate due) {
        return tasks.give(COORDINATOR, child, asked(to, due));
    }

    private Task find(TaskId id) {
        return tasks.of(COORDINATOR, child).stream()
                .filter(task -> task.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private List<Problem> problems(Asked asked) {
        return catchThrowableOfType(Invalid.class, () -> tasks.give(COORDINATOR, child, asked))
                .problems();
    }

    private static void at(List<Problem> problems, String field, String key) {
        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.field()).isEqualTo(field);
            assertThat(problem.key()).isEqualTo(key);
        });
    }

    @Test
    void whatIsGivenStandsWithTheFamilyUntilItTicks() {
        var id = give(FAMILY, TUESDAY);

        assertThat(tasks.forFamily(parent, child)).singleElement().satisfies(task -> {
            assertThat(task.says().in(Language.ES)).isEqualTo("Send us the film.");
            assertThat(task.says().shownIn(Language.ES)).isEqualTo(Language.EN);
            assertThat(task.givenBy()).isEqualTo(COORDINATOR.account());
        });
        assertThat(changes.since(parent, child, HearthwayTest.START.minusSeconds(1)))
                .extracting(told -> told.words().en())
                .containsExactly("New for you to do, by Tue, Mar 17.");

        tasks.tick(parent, id, 1);
        tasks.tick(parent, id, 1);

        assertThat(find(id).end()).hasValueSatisfying(end -> {
            assertThat(end.by()).isEqualTo(parent.account());
            assertThat(end.outcome()).isEqualTo(Outcome.DONE);
            assertThat(end.ticked()).isTrue();
        });
        assertThat(find(id).version()).isEqualTo(2);
    }

    @Test
    void aTickIsTakenBackForAShortWhileOnly() {
        var id = give(FAMILY, TUESDAY);
        tasks.tick(parent, id, 1);
        clock.advance(Tasks.UNDO);
        assertThat(tasks.forFamily(parent, child)).hasSize(1);
        tasks.takeBack(parent, id, 2);
        assertThat(find(id).end()).isEmpty();

        tasks.tick(parent, id, 3);
        clock.advance(Tasks.UNDO.plusSeconds(1));
        assertThat(tasks.forFamily(parent, child)).isEmpty();
        assertThatThrownBy(() -> tasks.takeBack(parent, id, 4)).isInstanceOf(Overtaken.class);
        tasks.takeBack(COORDINATOR, id, 4);
        assertThat(tasks.forFamily(parent, child)).hasSize(1);
    }

    @Test
    void whatTheTeamEndedAFamilyDoesNotOpenAgain() {
        var id = give(FAMILY, TUESDAY);
        tasks.end(COORDINATOR, id, Outcome.DONE, "", 1);
        assertThat(tasks.forFamily(parent, child)).isEmpty();
        assertThatThrownBy(() -> tasks.takeBack(parent, id, 2)).isInstanceOf(Overtaken.class);
    }

    @Test
    void takesNoDayThatHasPassedOrLiesTooFarAhead() {
        at(problems(asked(FAMILY, TODAY.minusDays(1))), "due", "task.problem.past");
        at(problems(asked(FAMILY, TODAY.plusYears(2).plusDays(1))), "due", "task.problem.far");
        give(FAMILY, TODAY);
        give(FAMILY, TODAY.plusYears(2));
    }

    @Test
    void asksForEachLanguageThatTheFamilyReads() {
        caregiver(Language.ES, Reach.VIEW_ONLY);
        at(problems(asked(FAMILY, TUESDAY)), "es", "task.problem.read.es");
        at(problems(new Asked(FAMILY, "", "Mande el video.", TUESDAY, Optional.empty())), "en", "task.problem.read.en");
        tasks.give(COORDINATOR, child, new Asked(FAMILY, "Send it.", "Mande el video.", TUESDAY, Optional.empty()));
        // of a task for the team one language is enough, and none is too few
        var nurses = new Assignee.AnyOf(Role.NURSE);
        tasks.give(COORDINATOR, child, new Asked(nurses, "", "Llamar.", TUESDAY, Optional.empty()));
        at(problems(new Asked(nurses, " ", "", TUESDAY, Optional.empty())), "en", "task.problem.empty");
    }

    @Test
    void isGivenOnlyToWhoCanDoIt() {
        var looking = caregiver(Language.EN, Reach.VIEW_ONLY);
        at(problems(asked(new Assignee.Caregiver(looking.account()), TUESDAY)), "to", "task.problem.to.family");
        at(problems(asked(new Assignee.AnyOf(Role.ADMINISTRATOR), TUESDAY)), "to", "task.problem.to.team");
        var gone = Team.member(accounts, passwords, "Ada Former", Role.NURSE);
        give(new Assignee.Person(gone.account()), TUESDAY);
        accounts.disable(ADMINISTRATOR, gone.account());
        at(problems(asked(new Assignee.Person(gone.account()), TUESDAY)), "to", "task.problem.to.team");
        households.unlink(ADMINISTRATOR, child, parent.account());
        at(problems(asked(FAMILY, TUESDAY)), "to", "task.problem.to.family");
    }

    @Test
    void belongsToAStageOfTheChildsOwnPathOnly() {
        plans.begin(People.with(Role.PHYSICIAN), child, "sdr", Plans.Beginning.INSTEAD, TODAY, "as agreed");
        var home = new Asked(FAMILY, "Rest.", "", TUESDAY, Optional.of("sdr/referral"));
        assertThat(find(tasks.give(COORDINATOR, child, home)).stage()).contains("sdr/referral");
        at(problems(new Asked(FAMILY, "Rest.", "", TUESDAY, Optional.of("itb/steady"))), "stage", "task.problem.stage");
    }

    @Test
    void whatOneCaregiverIsAskedNobodyElseOfTheFamilySees() {
        var other = caregiver(Language.EN, Reach.FULL);
        var id = give(new Assignee.Caregiver(parent.account()), TUESDAY);

        assertThat(tasks.forFamily(parent, child)).hasSize(1);
        assertThat(tasks.forFamily(other, child)).isEmpty();
        assertThatThrownBy(() -> tasks.tick(other, id, 1)).isInstanceOf(NotAvailable.class);
        assertThat(changes.since(other, child, HearthwayTest.START.minusSeconds(1)))
                .isEmpty();
        // nor does the other home's nurse in the folder
        var both = People.as(other.account(), Role.CAREGIVER, Role.NURSE);
        assertThat(tasks.of(both, child)).isEmpty();
        assertThatThrownBy(() -> tasks.end(both, id, Outcome.DONE, "", 1)).isInstanceOf(NotAvailable.class);
        tasks.tick(parent, id, 1);
    }

    @Test
    void whoMayOnlyLookSeesAndDoesNotTickAndAHelperSeesNothing() {
        var looking = caregiver(Language.EN, Reach.VIEW_ONLY);
        var helper = People.with(Role.HELPER);
        Helping.until(TODAY.plusDays(30), helpers, households, child, helper.account());
        var id = give(FAMILY, TUESDAY);

        assertThat(tasks.forFamily(looking, child)).hasSize(1);
        assertThatThrownBy(() -> tasks.tick(looking, id, 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> tasks.takeBack(looking, id, 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> tasks.forFamily(helper, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> tasks.tick(helper, id, 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> tasks.give(parent, child, asked(FAMILY, TUESDAY)))
                .isInstanceOf(NotAvailable.class);
    }

    @Test
    void theSecondOfTwoWhoChangeItIsTold() {
        var id = give(FAMILY, TUESDAY);
        tasks.change(COORDINATOR, id, asked(FAMILY, TUESDAY.plusDays(7)), 1);
        assertThatThrownBy(() -> tasks.change(COORDINATOR, id, asked(FAMILY, TUESDAY), 1))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> tasks.tick(parent, id, 1)).isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> tasks.end(COORDINATOR, id, Outcome.DONE, "", 1))
                .isInstanceOf(Overtaken.class);
        assertThat(find(id).due()).isEqualTo(TUESDAY.plusDays(7));
        tasks.tick(parent, id, 2);
        assertThatThrownBy(() -> tasks.change(COORDINATOR, id, asked(FAMILY, TUESDAY), 3))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void endsWithAnOutcomeOnly() {
        var id = give(FAMILY, TUESDAY);
        at(
                catchThrowableOfType(Invalid.class, () -> tasks.end(COORDINATOR, id, Outcome.NOT_NEEDED, " x ", 1))
                        .problems(),
                "reason",
                "task.problem.reason");
        tasks.end(COORDINATOR, id, Outcome.NOT_NEEDED, "It came by mail.", 1);
        assertThat(find(id).end().orElseThrow().reason()).isEqualTo("It came by mail.");
    }

    @Test
    void theDatabaseTakesNoTaskAwayWithoutAnOutcome() {
        var id = give(FAMILY, TUESDAY).value();
        for (var end :
                List.of("'DONE', null, ''", "'NOT_NEEDED', null, ''", "'ASIDE', null, 'later'", "'OPEN', null, 'x'")) {
            assertThatThrownBy(() -> version(id, end)).as(end).isInstanceOf(DataIntegrityViolationException.class);
        }
        version(id, "'ASIDE', date '2026-03-20', 'later'");
    }

    private void version(UUID task, String end) {
        db.sql("""
                insert into task_version (task, version, step, to_kind, says_en, says_es, due, state, aside_until, reason,
                  changed_by, changed_at)
                values (?, 2, 'CHANGED', 'FAMILY', 'x', '', date '2026-03-17', %s, 'test', current_timestamp)
                """.formatted(end)).param(task).update();
    }

    @Test
    void whatIsSetAsideComesBackOnItsDayAndIsWantedByThen() {
        var id = give(FAMILY, TODAY.plusDays(1));
        at(
                catchThrowableOfType(Invalid.class, () -> tasks.setAside(COORDINATOR, id, TODAY, "They travel.", 1))
                        .problems(),
                "until",
                "task.problem.until");
        tasks.setAside(COORDINATOR, id, TUESDAY, "They travel.", 1);
        assertThat(tasks.forFamily(parent, child)).isEmpty();

        clock.advance(Duration.ofDays(5));
        assertThat(tasks.forFamily(parent, child))
                .singleElement()
                .satisfies(task -> assertThat(task.wantedBy()).isEqualTo(TUESDAY));
        assertThat(lateItems()).isEmpty();
    }

    private List<Needs.Item> lateItems() {
        return needs.open(COORDINATOR).stream()
                .filter(item -> item.child().equals(child) && item.cause().rule() == Rule.TASK)
                .toList();
    }

    /** Anything that happens to a child makes the rules look at it again; so does the hourly round. */
    private void lookAgain() {
        give(new Assignee.AnyOf(Role.PHYSICIAN), TODAY.plusYears(1));
    }

    @Test
    void aLateTaskNeedsALookWithTheOneWhoseTaskItIsUntilItEnds() {
        var nurse = Team.member(accounts, passwords, "Callum Late", Role.NURSE);
        var own = give(new Assignee.Person(nurse.account()), TODAY);
        var familys = tasks.give(nurse, child, asked(FAMILY, TODAY));
        give(new Assignee.AnyOf(Role.THERAPIST), TODAY);
        clock.advance(Duration.ofDays(2));
        lookAgain();
        assertThat(lateItems())
                .extracting(item -> item.owner().map(Needs.Person::name))
                .containsExactlyInAnyOrder(Optional.of("Callum Late"), Optional.empty());

        clock.advance(Duration.ofDays(1));
        tasks.end(nurse, own, Outcome.DONE, "", 1);
        assertThat(lateItems())
                .extracting(item -> item.cause().subject())
                .hasSize(2)
                .contains(familys.toString())
                .doesNotContain(own.toString());
        tasks.tick(parent, familys, 1);
        assertThat(lateItems()).hasSize(1);
        assertThat(needs.left(COORDINATOR, HearthwayTest.START))
                .filteredOn(item -> item.child().equals(child))
                .hasSize(2);
    }

    @Test
    void waitsWithThePersonOrTheRoleItIsFor() {
        var nurse = Team.member(accounts, passwords, "Nora Waiting", Role.NURSE);
        give(new Assignee.Person(nurse.account()), TUESDAY);
        give(new Assignee.AnyOf(Role.NURSE), TUESDAY);
        give(new Assignee.AnyOf(Role.THERAPIST), TUESDAY);
        give(FAMILY, TUESDAY);
        assertThat(ofThisChild(tasks.mine(nurse)))
                .extracting(Task::to)
                .containsExactlyInAnyOrder(new Assignee.Person(nurse.account()), new Assignee.AnyOf(Role.NURSE));
        assertThat(ofThisChild(tasks.mine(People.with(Role.PHYSICIAN)))).isEmpty();
        assertThatThrownBy(() -> tasks.mine(parent)).isInstanceOf(NotAvailable.class);
    }

    private List<Task> ofThisChild(List<Task> all) {
        return all.stream().filter(task -> task.child().equals(child)).toList();
    }

    private List<Outbox.Message> mails() {
        return outbox.of(COORDINATOR, child).stream()
                .filter(message -> message.visit().isEmpty())
                .toList();
    }

    @Test
    void oneNeutralMailGoesTwoDaysBeforeHoweverManyThereAre() {
        caregiver(Language.EN, Reach.VIEW_ONLY);
        var first = give(FAMILY, TUESDAY);
        var second = give(FAMILY, TUESDAY);
        assertThat(mails()).singleElement().satisfies(mail -> {
            assertThat(mail.person()).isEqualTo(parent.account());
            // Sunday, 9:00 in New York, on summer time since that very week
            assertThat(mail.due()).isEqualTo("2026-03-15T13:00:00Z");
            assertThat(mail.subject()).isEqualTo("A small reminder for Tuesday, March 17");
            assertThat(mail.body()).doesNotContain("film").contains("http://localhost:8080/");
        });
        tasks.tick(parent, first, 1);
        assertThat(mails()).extracting(Outbox.Message::state).containsExactly(Outbox.State.PLANNED);
        tasks.tick(parent, second, 1);
        assertThat(mails()).extracting(Outbox.Message::state).containsExactly(Outbox.State.CANCELLED);
        tasks.takeBack(parent, second, 2);
        assertThat(mails()).extracting(Outbox.Message::state).containsExactly(Outbox.State.PLANNED);
    }

    @Test
    void restsWhileNothingIsAskedOfTheFamilyAndGoesOnExactlyAsItWas() {
        var nurse = Team.member(accounts, passwords, "Rosa Resting", Role.NURSE);
        give(new Assignee.Person(nurse.account()), TODAY);
        var id = give(FAMILY, TUESDAY);
        clock.advance(Duration.ofDays(1));
        lookAgain();
        var before = tasks.of(COORDINATOR, child);
        var flagged = lateItems();
        assertThat(flagged).hasSize(1);

        standings.say(COORDINATOR, child, new Standings.Saying(Status.AWAY, "In hospital", Optional.empty()), 0);
        assertThat(tasks.forFamily(parent, child)).isEmpty();
        assertThat(ofThisChild(tasks.mine(nurse))).isEmpty();
        assertThat(lateItems()).isEmpty();
        assertThat(outbox.board(COORDINATOR))
                .noneMatch(message -> message.child().equals(child));
        assertThat(tasks.of(COORDINATOR, child)).isEqualTo(before);

        standings.takeBack(COORDINATOR, child, "A mistake", 1);
        assertThat(tasks.forFamily(parent, child)).extracting(Task::id).containsExactly(id);
        assertThat(ofThisChild(tasks.mine(nurse))).hasSize(1);
        assertThat(lateItems()).isEqualTo(flagged);
        assertThat(tasks.of(COORDINATOR, child)).isEqualTo(before);
    }

    @Test
    void aTickFromAPageThatWasOpenIsKeptWhateverTheStatus() {
        var id = give(FAMILY, TUESDAY);
        standings.say(COORDINATOR, child, new Standings.Saying(Status.LEFT, "Moved on", Optional.empty()), 0);
        tasks.tick(parent, id, 1);
        assertThat(find(id).end()).isPresent();
        assertThat(mails()).extracting(Outbox.Message::state).containsExactly(Outbox.State.PLANNED);
        assertThat(outbox.board(COORDINATOR))
                .noneMatch(message -> message.child().equals(child));
    }
}
