package org.hearthway.task.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.hearthway.access.Accounts;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.pump.PumpBook;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.Tasks;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.PumpBooks;
import org.hearthway.testing.Team;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** It is Thursday, March 12, 2026; the clinic is closed on Saturday and Sunday. */
@HearthwayTest
class DoseCallsTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    @Autowired
    private PumpBook book;

    @Autowired
    private Tasks tasks;

    @Autowired
    private Accounts accounts;

    @Autowired
    private ChildRegister register;

    private Viewer.Person nurse = People.with(Role.NURSE);
    private ChildId child = ChildId.random();

    @BeforeEach
    void aPumpThatRuns() {
        nurse = Team.colleague(accounts, "Iris Vale", Role.NURSE);
        child = Children.enter(register);
        var physician = Team.colleague(accounts, "Dr. Otto Brand", Role.PHYSICIAN);
        PumpBooks.check(book, physician, child, PumpBooks.set(book, nurse, child, "500", "100", TODAY.minusDays(30)));
        assertThat(open()).as("the first setting changes no dose").isEmpty();
    }

    private List<Task> open() {
        return tasks.of(nurse, child).stream()
                .filter(task -> task.isOpenOn(TODAY))
                .toList();
    }

    @Test
    void aChangeOfDoseAsksTheNursesToCallWithinThreeDays() {
        PumpBooks.set(book, nurse, child, "500", "110", TODAY);
        assertThat(open()).singleElement().satisfies(task -> {
            assertThat(task.to()).isEqualTo(new Assignee.AnyOf(Role.NURSE));
            assertThat(task.due()).isEqualTo(TODAY.plusDays(1));
            assertThat(task.says().en()).contains("Call the family");
        });
    }

    @Test
    void theSameDoseOrOneOfLongAgoAsksForNoCall() {
        PumpBooks.set(book, nurse, child, "500", "100", TODAY);
        PumpBooks.set(book, nurse, child, "500", "110", TODAY.minusDays(20));
        assertThat(open()).isEmpty();
    }
}
