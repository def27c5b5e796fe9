package org.hearthway.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.desk.Board.Case;
import org.hearthway.desk.Desk;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.visit.Visit.Answer;
import org.hearthway.visit.Visits.Given;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Two caregivers, one visit, two answers: both are kept, the slot stays, the office settles it. */
@HearthwayTest
class TwoAnswersTests {

    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final String WISH = "I work that day.";

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Visits visits;

    @Autowired
    private Desk desk;

    private ChildId child = ChildId.random();
    private Viewer.Person one = People.with(Role.CAREGIVER);
    private Viewer.Person other = People.with(Role.CAREGIVER);
    private VisitId visit = VisitId.random();

    @BeforeEach
    void aVisitOfAChildWithTwoCaregivers() {
        child = Children.enter(register);
        one = Children.caregiver(households, child, Reach.FULL);
        other = Children.caregiver(households, child, Reach.FULL);
        visit = visits.book(
                DESK,
                child,
                new Visits.Booking("therapy", LocalDateTime.of(2026, 3, 24, 10, 30), 45, "", Optional.empty()));
    }

    private boolean standsAtTheDeskAsDisagreed() {
        return desk.board(DESK).rows().stream()
                .anyMatch(row -> row.says() == Case.DISAGREED
                        && row.visit().filter(v -> v.id().equals(visit)).isPresent());
    }

    @Test
    void areBothKeptWhicheverComesFirst() {
        visits.confirm(one, visit, 0);
        assertThat(standsAtTheDeskAsDisagreed()).isFalse();
        visits.askToMove(other, visit, 0, WISH);

        assertThat(visits.disputed(DESK).get(visit))
                .containsExactly(
                        new Given(one.account(), Answer.CONFIRMED, "", HearthwayTest.START),
                        new Given(other.account(), Answer.ASKED_TO_MOVE, WISH, HearthwayTest.START));
        assertThat(standsAtTheDeskAsDisagreed()).isTrue();
        assertThat(visits.get(DESK, visit).start()).isEqualTo(LocalDateTime.of(2026, 3, 24, 10, 30));
    }

    @Test
    void aYesDoesNotOverwriteAWishToMove() {
        visits.askToMove(other, visit, 0, WISH);
        visits.confirm(one, visit, 0);

        assertThat(visits.get(DESK, visit).answer()).isEqualTo(Answer.ASKED_TO_MOVE);
        assertThat(visits.get(DESK, visit).wish()).isEqualTo(WISH);
        assertThat(standsAtTheDeskAsDisagreed()).isTrue();
    }

    @Test
    void eachCaregiverIsShownItsOwnAnswerAndNeverTheWordsOfTheOther() {
        visits.askToMove(other, visit, 0, WISH);
        assertThat(visits.get(one, visit).answer()).isEqualTo(Answer.NONE);
        assertThat(visits.get(one, visit).wish()).isEmpty();
        visits.confirm(one, visit, 0);

        assertThat(visits.upcoming(one, child)).singleElement().satisfies(seen -> {
            assertThat(seen.answer()).isEqualTo(Answer.CONFIRMED);
            assertThat(seen.wish()).isEmpty();
        });
        assertThat(visits.upcoming(other, child)).singleElement().satisfies(seen -> {
            assertThat(seen.answer()).isEqualTo(Answer.ASKED_TO_MOVE);
            assertThat(seen.wish()).isEqualTo(WISH);
        });
        assertThat(visits.isDisputed(one, visit)).isTrue();
        assertThatThrownBy(() -> visits.disputed(one)).isInstanceOf(NotAvailable.class);
        var link = new Viewer.LinkHolder(UUID.randomUUID(), child, Optional.of(one.account()));
        assertThat(visits.get(link, visit).wish()).isEmpty();
        assertThat(visits.get(link, visit).answer()).isEqualTo(Answer.CONFIRMED);
    }

    @Test
    void onePersonWhoChangesItsMindDisagreesWithNobody() {
        visits.confirm(one, visit, 0);
        visits.askToMove(one, visit, 0, WISH);
        assertThat(visits.disputed(DESK)).doesNotContainKey(visit);

        // by the link of a message it is the same person
        visits.confirm(new Viewer.LinkHolder(UUID.randomUUID(), child, Optional.of(one.account())), visit, 0);
        assertThat(visits.disputed(DESK)).doesNotContainKey(visit);
        assertThat(visits.get(DESK, visit).answer()).isEqualTo(Answer.CONFIRMED);
    }

    @Test
    void theOfficeSettlesItByAYesOrByMoving() {
        visits.confirm(one, visit, 0);
        visits.askToMove(other, visit, 0, WISH);
        visits.confirm(DESK, visit, 0);
        assertThat(standsAtTheDeskAsDisagreed()).isFalse();
        assertThat(visits.get(one, visit).answer()).isEqualTo(Answer.CONFIRMED);
        assertThat(visits.get(other, visit).answer()).isEqualTo(Answer.CONFIRMED);

        visits.askToMove(other, visit, 0, WISH);
        visits.confirm(one, visit, 0);
        assertThat(standsAtTheDeskAsDisagreed()).isTrue();
        var seen = visits.get(DESK, visit);
        visits.move(DESK, visit, LocalDateTime.of(2026, 3, 25, 14, 0), seen.version());
        assertThat(standsAtTheDeskAsDisagreed()).isFalse();
        assertThat(visits.get(one, visit).answer()).isEqualTo(Answer.NONE);
    }

    @Test
    void whoTakesTheWishBackEndsIt() {
        visits.askToMove(other, visit, 0, WISH);
        visits.confirm(one, visit, 0);
        visits.confirm(other, visit, 0);

        assertThat(visits.isDisputed(one, visit)).isFalse();
        assertThat(visits.get(DESK, visit).answer()).isEqualTo(Answer.CONFIRMED);
        assertThat(visits.get(DESK, visit).wish()).isEmpty();
    }
}
