package org.hearthway.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.Accounts;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Gone;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Device;
import org.hearthway.child.Device.Part;
import org.hearthway.child.Device.What;
import org.hearthway.child.Devices;
import org.hearthway.pump.PumpBook;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.PumpBooks;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.Team;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A pump with a refill near, which is taken out, or replaced: no day of the old one is told anywhere, and nobody forgets the new one. */
@HearthwayTest
class ReplacedPumpTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate OLD = TODAY.minusYears(6);
    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);

    @Autowired
    private PumpBook pumps;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Devices devices;

    @Autowired
    private Needs needs;

    @Autowired
    private Desk desk;

    @Autowired
    private ChildRegister register;

    @Autowired
    private SettableClock clock;

    private ChildId child = ChildId.random();
    private UUID device = UUID.randomUUID();

    private Viewer.Person nurse = People.with(Role.NURSE);
    private Viewer.Person physician = People.with(Role.PHYSICIAN);

    @BeforeEach
    void aPumpWithARefillNear() {
        nurse = Team.colleague(accounts, "Iris Vale", Role.NURSE);
        physician = Team.colleague(accounts, "Dr. Otto Brand", Role.PHYSICIAN);
        child = Children.enter(register);
        device = devices.enter(nurse, child, Device.Kind.PUMP, List.of(in("R1", OLD)));
        PumpBooks.refilled(pumps, nurse, physician, child, TODAY.minusDays(90), TODAY.plusDays(12));
        assertThat(toBook()).containsExactly("refill");
        assertThat(rules()).containsExactly(Rule.REFILL);
    }

    private static Part in(String serial, LocalDate day) {
        return new Part(What.RESERVOIR, serial, day, Optional.empty());
    }

    private static Part out(String serial) {
        return new Part(What.RESERVOIR, serial, OLD, Optional.of(TODAY));
    }

    private List<String> toBook() {
        return desk.board(COORDINATOR).in(Board.Group.TO_BOOK).stream()
                .filter(row -> row.child().equals(child))
                .flatMap(row -> row.wanted().stream())
                .map(Board.Wanted::purpose)
                .toList();
    }

    /** What is asked of the pump; a check of the hips is another matter. */
    private List<Rule> rules() {
        return needs.open(nurse).stream()
                .filter(item -> item.child().equals(child))
                .map(item -> item.cause().rule())
                .filter(rule -> rule != Rule.CHECK)
                .toList();
    }

    private List<Gone> gone() {
        return needs.left(nurse, clock.instant()).stream()
                .filter(item -> item.child().equals(child))
                .flatMap(item -> item.left().flatMap(Needs.Left::gone).stream())
                .toList();
    }

    @Test
    void aNewPumpIsLookedAfterUntilItsFirstFillIsRecorded() {
        devices.change(nurse, child, device, List.of(out("R1"), in("R2", TODAY)), 1);
        assertThat(toBook()).isEmpty();
        assertThat(rules()).containsExactly(Rule.FIRST_FILL);

        PumpBooks.refilled(pumps, nurse, physician, child, TODAY, TODAY.plusDays(100));
        assertThat(rules()).isEmpty();
        assertThat(gone()).contains(Gone.FILL_RECORDED);
    }

    @Test
    void aPumpThatIsOutAsksForNothing() {
        devices.change(nurse, child, device, List.of(out("R1")), 1);
        assertThat(toBook()).isEmpty();
        assertThat(rules()).isEmpty();
    }

    @Test
    void aNewPumpThatIsTakenOutAgainIsForgottenAtOnce() {
        devices.change(nurse, child, device, List.of(out("R1"), in("R2", TODAY)), 1);
        devices.change(
                nurse, child, device, List.of(out("R1"), new Part(What.RESERVOIR, "R2", TODAY, Optional.of(TODAY))), 2);
        assertThat(rules()).isEmpty();
        assertThat(gone()).contains(Gone.DEVICE_CHANGED);
    }
}
