package org.hearthway.pump;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Device;
import org.hearthway.child.Devices;
import org.hearthway.child.Households;
import org.hearthway.desk.Board;
import org.hearthway.desk.Desk;
import org.hearthway.paper.EmergencySheets;
import org.hearthway.reminder.Outbox;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.PumpBooks;
import org.hearthway.testing.Team;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * A pump whose day to refill by has passed is refilled, and a second person has not checked it yet: what everybody who
 * asks is told. It is Thursday, March 12, 2026.
 */
@HearthwayTest
class RefillBeingCheckedTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);

    @Autowired
    private PumpBook book;

    @Autowired
    private Pumps pumps;

    @Autowired
    private Accounts accounts;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Devices devices;

    @Autowired
    private Desk desk;

    @Autowired
    private Needs needs;

    @Autowired
    private Outbox outbox;

    @Autowired
    private EmergencySheets sheets;

    private Viewer.Person nurse = People.with(Role.NURSE);
    private Viewer.Person physician = People.with(Role.PHYSICIAN);
    private Viewer.Person parent = People.with(Role.CAREGIVER);
    private ChildId child = ChildId.random();

    @BeforeEach
    void aRefillIsOverdue() {
        nurse = Team.colleague(accounts, "Iris Vale", Role.NURSE);
        physician = Team.colleague(accounts, "Dr. Otto Brand", Role.PHYSICIAN);
        child = Children.enter(register);
        var invited = accounts.invite(
                ADMINISTRATOR,
                new NewAccount(
                        "Pat Somebody",
                        People.freshEmail(),
                        "555-0142",
                        Set.of(Role.CAREGIVER),
                        Language.EN,
                        People.ZONE));
        parent = People.as(invited.account(), Role.CAREGIVER);
        households.link(ADMINISTRATOR, child, invited.account(), Households.Reach.FULL);
        devices.enter(
                nurse,
                child,
                Device.Kind.PUMP,
                List.of(new Device.Part(Device.What.RESERVOIR, "R1", TODAY.minusYears(1), Optional.empty())));
        PumpBooks.refilled(book, nurse, physician, child, TODAY.minusDays(100), TODAY.plusDays(3));
        assertThat(rules()).contains(Rule.REFILL);
        assertThat(live()).as("the family is written to, and called").isNotEmpty();
    }

    private List<Rule> rules() {
        return needs.open(nurse).stream()
                .filter(item -> item.child().equals(child))
                .map(item -> item.cause().rule())
                .toList();
    }

    private List<Outbox.State> live() {
        return outbox.of(COORDINATOR, child).stream()
                .map(Outbox.Message::state)
                .filter(state -> state == Outbox.State.PLANNED || state == Outbox.State.TO_CALL)
                .toList();
    }

    private List<Board.Case> toBook() {
        return desk.board(COORDINATOR).in(Board.Group.TO_BOOK).stream()
                .filter(row -> row.child().equals(child))
                .filter(row -> row.wanted().stream()
                        .anyMatch(wanted -> wanted.purpose().equals("refill")))
                .map(Board.Row::says)
                .toList();
    }

    @Test
    void everybodyIsToldThatItIsBeingCheckedAndNobodyAnOldDateOrAFigure() {
        var entry = PumpBooks.refill(book, nurse, child, TODAY, TODAY.plusDays(90), "");

        assertThat(pumps.refill(parent, child)).hasValueSatisfying(told -> {
            assertThat(told.beingChecked()).isTrue();
            assertThat(told.filled()).isEqualTo(TODAY);
            assertThat(told.window()).isEmpty();
        });
        assertThat(rules()).as("no alarm for the old day").doesNotContain(Rule.REFILL);
        assertThat(live()).as("nor mails and calls about it").isEmpty();
        assertThat(toBook()).containsExactly(Board.Case.REFILL_CHECKED);
        var sheet = sheets.sheet(parent, child);
        assertThat(sheet.fill()).hasValueSatisfying(fill -> {
            assertThat(fill.beingChecked()).isTrue();
            assertThat(fill.window()).as("no alarm date that nobody checked").isEmpty();
        });
        assertThat(book.history(physician, child).get(0).entry())
                .as("nothing of it for the one who is to check it")
                .isEmpty();

        PumpBooks.check(book, physician, child, entry);

        assertThat(pumps.refill(parent, child).orElseThrow().day()).contains(LocalDate.of(2026, 6, 5));
        assertThat(toBook()).as("far ahead").isEmpty();
        assertThat(live()).as("reminders of the new day").isNotEmpty();
        assertThat(sheets.sheet(parent, child)
                        .fill()
                        .orElseThrow()
                        .window()
                        .orElseThrow()
                        .alarm())
                .contains(TODAY.plusDays(90));
    }
}
