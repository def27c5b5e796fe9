package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.access.Accounts;
import org.hearthway.access.OnCall;
import org.hearthway.access.Passwords;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.Needs.Outcome;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.Team;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/** A child who was not brought twice in a row goes to the person whom the clinic named. */
@HearthwayTest
@DirtiesContext
@TestPropertySource(
        properties = {
            "spring.datasource.url=jdbc:h2:mem:missed;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1",
            "hearthway.outbox.loop=false",
            "hearthway.needs.first=P1D"
        })
class MissedVisitTests {

    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    @Autowired
    private OnCall onCall;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Standings standings;

    @Autowired
    private Visits visits;

    @Autowired
    private Needs needs;

    @Autowired
    private SettableClock clock;

    private ChildId child;
    private Viewer.Person named;

    @BeforeEach
    void somebodyIsNamed() {
        child = Children.enter(register);
        named = Team.member(accounts, passwords, "Nadia Named", Role.COORDINATOR);
        var nurse = Team.member(accounts, passwords, "Nell Somebody", Role.NURSE);
        onCall.say(
                ADMINISTRATOR,
                new OnCall.Order(15, List.of(nurse.account()), List.of(nurse.account()), Optional.of(named.account())),
                onCall.now(ADMINISTRATOR).version());
    }

    private void visit(String kind, int day, boolean came) {
        clock.set(HearthwayTest.START);
        var start = LocalDateTime.of(2026, 3, day, 10, 0);
        var visit = visits.book(DESK, child, new Visits.Booking(kind, start, 45, "Room 2", Optional.empty()));
        clock.set(start.atZone(People.ZONE).toInstant().plus(Duration.ofHours(2)));
        visits.attended(DESK, visit, came, visits.get(DESK, visit).version());
    }

    private List<Needs.Item> missed() {
        return needs.open(DESK).stream()
                .filter(item -> item.child().equals(child) && item.cause().rule() == Rule.MISSED)
                .toList();
    }

    @Test
    void aRefillMissedTwiceGoesToTheNamedPersonInTheMomentItIsNoted() {
        visit("refill", 16, false);
        assertThat(missed()).isEmpty();
        visit("refill", 18, false);
        assertThat(missed()).singleElement().satisfies(item -> {
            assertThat(item.owner()).map(Needs.Person::name).contains("Nadia Named");
            assertThat(item.cause().count()).isEqualTo(2);
            assertThat(item.cause().dueDay()).isEqualTo("2026-03-18");
        });
    }

    @Test
    void itLeavesWithAnOutcomeAndComesBackWithTheNextMissedVisit() {
        visit("refill", 16, false);
        visit("refill", 18, false);
        var item = missed().get(0);
        needs.close(named, item.id(), Outcome.SPOKE, "no car; a taxi is ordered", item.version());
        assertThat(missed()).isEmpty();
        visit("refill", 20, false);
        assertThat(missed())
                .singleElement()
                .satisfies(again -> assertThat(again.cause().count()).isEqualTo(3));
    }

    @Test
    void otherVisitsAndOneThatWasKeptGoToNobody() {
        visit("therapy", 16, false);
        visit("therapy", 17, false);
        visit("refill", 18, false);
        visit("refill", 19, true);
        visit("refill", 20, false);
        assertThat(missed()).isEmpty();
    }

    @Test
    void whenTheNamedPersonWasShutOutItGoesToTheUsualRole() {
        accounts.disable(ADMINISTRATOR, named.account());
        visit("refill", 16, false);
        visit("refill", 18, false);
        assertThat(missed()).singleElement().satisfies(item -> {
            assertThat(item.owner()).isEmpty();
            assertThat(needs.conduct(item).with()).isEqualTo(Role.COORDINATOR);
        });
    }

    @Test
    void standsStillWhileNobodyWatchesTheChild() {
        visit("refill", 16, false);
        visit("refill", 18, false);
        var before = missed();
        standings.say(
                People.with(Role.NURSE), child, new Standings.Saying(Status.LEFT, "moved on", Optional.empty()), 0);
        assertThat(missed()).isEmpty();
        standings.takeBack(People.with(Role.NURSE), child, "came back", 1);
        assertThat(missed()).isEqualTo(before);
    }
}
