package org.hearthway.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.path.Plans;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Visits that a path asked for go with the path, and come back when that is taken back. */
@HearthwayTest
class VisitsOfPathsTests {

    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final Viewer.Person SURGEON = People.with(Role.PHYSICIAN);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    @Autowired
    private ChildRegister register;

    @Autowired
    private Visits visits;

    @Autowired
    private Plans plans;

    private ChildId child = ChildId.random();
    private VisitId ofThePath = VisitId.random();
    private VisitId ofItsOwn = VisitId.random();

    @BeforeEach
    void aChildOnAPathWithTwoVisits() {
        child = Children.enter(register);
        plans.begin(SURGEON, child, "itb", Plans.Beginning.INSTEAD, TODAY.minusMonths(3), "referred");
        var talk = plans.plans(SURGEON, child).stream()
                .findFirst()
                .orElseThrow()
                .plan()
                .stage("team-meeting")
                .orElseThrow()
                .visits()
                .get(0);
        ofThePath = book(Optional.of(talk.purpose()), 10);
        ofItsOwn = book(Optional.empty(), 14);
    }

    private VisitId book(Optional<String> purpose, int hour) {
        return visits.book(
                DESK,
                child,
                new Visits.Booking("team-meeting", LocalDateTime.of(2026, 4, 14, hour, 0), 45, "", purpose));
    }

    private Visit.State state(VisitId visit) {
        return visits.get(DESK, visit).state();
    }

    private void end() {
        var version = plans.plans(SURGEON, child).get(0).version();
        plans.apply(
                SURGEON, child, "itb", new Plans.Change.End("test-dose", "no-response", TODAY), "no response", version);
    }

    private void takeBack() {
        var version = plans.plans(SURGEON, child).get(0).version();
        plans.undo(SURGEON, child, 2, "entered for another child", version);
    }

    @Test
    void areCancelledWhenThePathEndsAndComeBackWhenThatIsTakenBack() {
        end();
        assertThat(state(ofThePath)).isEqualTo(Visit.State.CANCELLED);
        assertThat(state(ofItsOwn)).isEqualTo(Visit.State.BOOKED);
        takeBack();
        assertThat(state(ofThePath)).isEqualTo(Visit.State.BOOKED);
    }

    @Test
    void stayCancelledWhereAPersonCancelledThem() {
        visits.cancel(DESK, ofThePath, visits.get(DESK, ofThePath).version());
        end();
        takeBack();
        assertThat(state(ofThePath)).isEqualTo(Visit.State.CANCELLED);
    }
}
