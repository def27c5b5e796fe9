package org.hearthway.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Standings.Saying;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class StandingsTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    @Autowired
    private Standings standings;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Devices devices;

    @Autowired
    private Accounts accounts;

    private final Viewer.Person nurse = People.with(Role.NURSE);

    private static Saying saying(Status status) {
        return new Saying(status, "told by the family", Optional.empty());
    }

    private static Saying handedOver(Status status, String service, Optional<LocalDate> day) {
        return new Saying(status, "grown up", Optional.of(new Standing.Handover(service, day)));
    }

    private Viewer.Person account(String name, String phone) {
        var invited = accounts.invite(
                People.with(Role.ADMINISTRATOR),
                new NewAccount(name, People.freshEmail(), phone, Set.of(Role.NURSE), Language.EN, People.ZONE));
        return People.as(invited.account(), Role.NURSE);
    }

    private ChildId child() {
        return Children.enter(register);
    }

    private void implant(ChildId child) {
        devices.enter(
                nurse,
                child,
                Device.Kind.PUMP,
                List.of(new Device.Part(Device.What.RESERVOIR, "K-2041", TODAY.minusYears(1), Optional.empty())));
    }

    @Test
    void aChildIsActiveUntilSomebodySaysOtherwise() {
        var child = child();
        assertThat(standings.now(nurse, child).status()).isEqualTo(Status.ACTIVE);
        assertThat(standings.now(nurse, child).number()).isZero();

        standings.say(nurse, child, saying(Status.AWAY), 0);

        assertThat(standings.now(nurse, child).status()).isEqualTo(Status.AWAY);
        assertThat(standings.notActive(nurse)).containsEntry(child, Status.AWAY);
        assertThat(standings.history(nurse, child)).extracting(Standing::reason).containsExactly("told by the family");
    }

    @Test
    void aDeathWaitsForASecondPersonAndOnlyOnce() {
        var child = child();
        var first = account("Ines Quill", "");
        var second = account("Odell Frame", "");
        standings.say(first, child, saying(Status.DIED), 0);
        assertThat(standings.now(nurse, child).waitsForSecondPerson()).isTrue();
        assertThat(standings.waiting(nurse)).contains(child);

        standings.confirm(second, child, 1);

        assertThat(standings.now(nurse, child).confirmedBy()).contains(second.account());
        assertThat(standings.waiting(nurse)).doesNotContain(child);
        assertThatThrownBy(() -> standings.confirm(second, child, 1)).isInstanceOf(Overtaken.class);
    }

    @Test
    void nobodyIsTheirOwnSecondPersonNeitherUnderASecondAccount() {
        var child = child();
        var first = account("Íñes Quill", "555-0141");
        standings.say(first, child, saying(Status.DIED), 0);

        for (var again : List.of(first, account("Quill Ines", ""), account("I. Q.", "555 0141"))) {
            assertThatThrownBy(() -> standings.confirm(again, child, 1))
                    .isInstanceOfSatisfying(
                            Invalid.class,
                            refused -> assertThat(refused.problems())
                                    .extracting(Problem::key)
                                    .containsExactly("child.problem.same-person"));
        }
        assertThat(standings.now(nurse, child).waitsForSecondPerson()).isTrue();
    }

    @Test
    void takingItBackRestoresWhatWasSaidBefore() {
        var child = child();
        standings.say(nurse, child, saying(Status.AWAY), 0);
        standings.say(nurse, child, saying(Status.DIED), 1);

        standings.takeBack(nurse, child, "wrong child", 2);

        var now = standings.now(nurse, child);
        assertThat(now.status()).isEqualTo(Status.AWAY);
        assertThat(now.undoes()).contains(2L);
        assertThat(standings.history(nurse, child)).hasSize(3);
        assertThatThrownBy(() -> standings.takeBack(nurse, child, "again", 3)).isInstanceOf(Invalid.class);
    }

    @Test
    void aChildThatMovesHasAReceivingServiceAndWithADeviceItsFirstDate() {
        var child = child();
        assertThatThrownBy(() -> standings.say(nurse, child, saying(Status.MOVED), 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::field)
                                .containsExactly("service"));

        implant(child);
        assertThatThrownBy(() -> standings.say(
                        nurse, child, handedOver(Status.ADULT_CARE, "Harbor adult team", Optional.empty()), 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::key)
                                .containsExactly("child.problem.device-date-missing"));
        for (var outside : List.of(TODAY.minusDays(1), TODAY.plusMonths(12).plusDays(1))) {
            assertThatThrownBy(() -> standings.say(
                            nurse, child, handedOver(Status.ADULT_CARE, "Harbor adult team", Optional.of(outside)), 0))
                    .isInstanceOf(Invalid.class);
        }

        standings.say(nurse, child, handedOver(Status.ADULT_CARE, "Harbor adult team", Optional.of(TODAY)), 0);
        assertThat(standings.now(nurse, child).handover())
                .contains(new Standing.Handover("Harbor adult team", Optional.of(TODAY)));
    }

    @Test
    void asksForAReasonAndForAnotherStatus() {
        var child = child();
        assertThatThrownBy(() -> standings.say(nurse, child, new Saying(Status.ACTIVE, " ", Optional.empty()), 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::field)
                                .containsExactly("status", "reason"));
        assertThatThrownBy(() ->
                        standings.say(nurse, child, new Saying(Status.AWAY, "x".repeat(501), Optional.empty()), 0))
                .isInstanceOf(Invalid.class);
    }

    @Test
    void aStaleWordChangesNothing() {
        var child = child();
        standings.say(nurse, child, saying(Status.AWAY), 0);
        assertThatThrownBy(() -> standings.say(nurse, child, saying(Status.LEFT), 0))
                .isInstanceOf(Overtaken.class);
        assertThat(standings.now(nurse, child).status()).isEqualTo(Status.AWAY);
    }

    @Test
    void aCaregiverSeesItAndSaysNothing() {
        var child = child();
        var parent = Children.caregiver(households, child, Reach.FULL);
        assertThat(standings.now(parent, child).status()).isEqualTo(Status.ACTIVE);
        assertThatThrownBy(() -> standings.say(parent, child, saying(Status.LEFT), 0))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> standings.history(parent, child)).isInstanceOf(NotAvailable.class);
    }
}
