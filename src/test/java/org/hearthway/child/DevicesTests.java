package org.hearthway.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device.Part;
import org.hearthway.child.Device.What;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class DevicesTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate IMPLANTED = TODAY.minusYears(2);

    @Autowired
    private Devices devices;

    @Autowired
    private ChildRegister register;

    private final Viewer.Person nurse = People.with(Role.NURSE);

    private static Part in(What what, String serial) {
        return new Part(what, serial, IMPLANTED, Optional.empty());
    }

    private static Part out(What what, String serial, LocalDate removed) {
        return new Part(what, serial, IMPLANTED, Optional.of(removed));
    }

    @Test
    void theRecordStaysInPlaceWhileAnyPartIsIn() {
        var child = Children.enter(register);
        var id = devices.enter(
                nurse, child, Device.Kind.STIMULATOR, List.of(in(What.GENERATOR, "G1"), in(What.LEAD, "L1")));

        devices.change(nurse, child, id, List.of(out(What.GENERATOR, "G1", TODAY), in(What.LEAD, "L1")), 1);
        assertThat(devices.anyInPlace(child)).isTrue();
        assertThat(devices.of(nurse, child).get(0).implanted()).contains(IMPLANTED);

        devices.change(nurse, child, id, List.of(out(What.GENERATOR, "G1", TODAY), out(What.LEAD, "L1", TODAY)), 2);
        assertThat(devices.anyInPlace(child)).isFalse();
        assertThat(devices.of(nurse, child)).hasSize(1);
    }

    @Test
    void aPumpIsTakenOutOnceNoReservoirIsInAndNotForWantOfARecord() {
        var child = Children.enter(register);
        assertThat(pump(child)).isEmpty();
        var first = devices.enter(
                nurse, child, Device.Kind.PUMP, List.of(in(What.RESERVOIR, "R1"), in(What.CATHETER, "C1")));
        assertThat(pump(child)).contains(new PumpNow(true, IMPLANTED));

        devices.change(nurse, child, first, List.of(out(What.RESERVOIR, "R1", TODAY), in(What.CATHETER, "C1")), 1);
        assertThat(pump(child)).contains(new PumpNow(false, TODAY));

        devices.enter(
                nurse,
                child,
                Device.Kind.PUMP,
                List.of(new Part(What.RESERVOIR, "R2", TODAY.minusDays(1), Optional.empty())));
        assertThat(pump(child)).contains(new PumpNow(true, TODAY.minusDays(1)));
    }

    /** What is said of one child and of all must be the same. */
    private Optional<PumpNow> pump(ChildId child) {
        assertThat(devices.pump(child))
                .isEqualTo(Optional.ofNullable(devices.pumps().get(child)));
        return devices.pump(child);
    }

    @Test
    void ofAPumpThatTookThePlaceOfAnotherTheNewerTellsSinceWhen() {
        var child = Children.enter(register);
        devices.enter(
                nurse,
                child,
                Device.Kind.PUMP,
                List.of(
                        out(What.RESERVOIR, "R1", TODAY.minusDays(3)),
                        new Part(What.RESERVOIR, "R2", TODAY.minusDays(3), Optional.empty()),
                        in(What.CATHETER, "C1")));
        assertThat(pump(child)).contains(new PumpNow(true, TODAY.minusDays(3)));
    }

    @Test
    void namesEachPartThatIsWrong() {
        var child = Children.enter(register);
        var parts = List.of(
                in(What.LEAD, "L1"),
                in(What.CATHETER, " "),
                new Part(What.RESERVOIR, "R1", TODAY.plusDays(1), Optional.empty()),
                out(What.RESERVOIR, "R2", IMPLANTED.minusDays(1)),
                out(What.RESERVOIR, "R3", TODAY.plusDays(1)));
        assertThatThrownBy(() -> devices.enter(nurse, child, Device.Kind.PUMP, parts))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::field)
                                .containsExactly("what0", "serial1", "implanted2", "removed3", "removed4"));
        assertThatThrownBy(() -> devices.enter(nurse, child, Device.Kind.PUMP, List.of()))
                .isInstanceOf(Invalid.class);
    }

    @Test
    void aStaleChangeIsRefusedAndAnotherChildsDeviceIsNotThere() {
        var child = Children.enter(register);
        var id = devices.enter(nurse, child, Device.Kind.PUMP, List.of(in(What.RESERVOIR, "R1")));
        devices.change(nurse, child, id, List.of(in(What.RESERVOIR, "R2")), 1);

        assertThatThrownBy(() -> devices.change(nurse, child, id, List.of(in(What.RESERVOIR, "R3")), 1))
                .isInstanceOf(Overtaken.class);
        var other = Children.enter(register);
        assertThatThrownBy(() -> devices.change(nurse, other, id, List.of(in(What.RESERVOIR, "R3")), 2))
                .isInstanceOf(NotAvailable.class);
        assertThat(devices.of(nurse, child).get(0).parts())
                .extracting(Part::serial)
                .containsExactly("R2");
    }
}
