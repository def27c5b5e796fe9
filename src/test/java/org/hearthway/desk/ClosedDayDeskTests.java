package org.hearthway.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClosedDays;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A visit, and the clinic that closes on its day. */
@HearthwayTest
class ClosedDayDeskTests {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 24);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);

    @Autowired
    private ClosedDays closed;

    @Autowired
    private Visits visits;

    @Autowired
    private Desk desk;

    @Autowired
    private ChildRegister register;

    @AfterEach
    void openAgain() {
        closed.ahead(ADMINISTRATOR).forEach(day -> closed.open(ADMINISTRATOR, day.day(), day.version()));
    }

    private List<Board.Case> says(ChildId child) {
        return desk.board(COORDINATOR).rows().stream()
                .filter(row -> row.child().equals(child) && row.visit().isPresent())
                .map(Board.Row::says)
                .toList();
    }

    @Test
    void aVisitOnADayThatWasClosedSinceStandsAtTheDeskUntilItIsMoved() {
        var child = Children.enter(register);
        var visit = visits.book(
                COORDINATOR, child, new Visits.Booking("review", DAY.atTime(9, 0), 30, "", Optional.empty()));
        var before = says(child);
        assertThat(before).doesNotContain(Board.Case.CLOSED_DAY);

        closed.close(ADMINISTRATOR, DAY, "Town fair", "Feria del pueblo");
        assertThat(says(child)).containsExactly(Board.Case.CLOSED_DAY);

        visits.move(
                COORDINATOR,
                visit,
                DAY.plusDays(1).atTime(9, 0),
                visits.get(COORDINATOR, visit).version());
        assertThat(says(child)).doesNotContain(Board.Case.CLOSED_DAY);
    }

    @Test
    void isAsBeforeOnceTheDayIsOpenAgain() {
        var child = Children.enter(register);
        visits.book(COORDINATOR, child, new Visits.Booking("review", DAY.atTime(9, 0), 30, "", Optional.empty()));
        var before = says(child);
        closed.close(ADMINISTRATOR, DAY, "Town fair", "Feria del pueblo");
        closed.open(ADMINISTRATOR, DAY, closed.ahead(ADMINISTRATOR).get(0).version());
        assertThat(says(child)).isEqualTo(before);
    }
}
