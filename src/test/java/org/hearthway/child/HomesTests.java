package org.hearthway.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Homes.Home;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.engine.Nights;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class HomesTests {

    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final Viewer.Person NURSE = People.with(Role.NURSE);

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Homes homes;

    @Autowired
    private AuditTrail trail;

    private static Home home(String relation, Nights nights) {
        return new Home(relation, Authority.YES, "12 Elder Lane", "", nights, false, true, "Prefers a call.");
    }

    @Test
    void keepsWhatWasEnteredWithWhoAndWhenAndLeavesItsLineInTheTrail() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL);
        var home = home(" mother ", new Nights(Set.of(DayOfWeek.FRIDAY), Set.of(DayOfWeek.MONDAY), Optional.of(TODAY)));

        homes.enter(DESK, child, parent.account(), home, 0);

        assertThat(homes.of(NURSE, child).get(parent.account())).satisfies(entered -> {
            assertThat(entered.home()).isEqualTo(home("mother", home.nights()));
            assertThat(entered.number()).isEqualTo(1);
            assertThat(entered.by()).isEqualTo(DESK.tag());
            assertThat(entered.at()).isEqualTo(HearthwayTest.START);
        });
        assertThat(trail.newest(People.with(Role.ADMINISTRATOR), 10))
                .anySatisfy(line -> assertThat(line.what()).isEqualTo("changed: HomeEntered"))
                .noneSatisfy(line -> assertThat(line.what()).contains("Elder"));
    }

    @Test
    void refusesWhoSawAnOlderState() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL).account();
        homes.enter(DESK, child, parent, home("mother", Nights.NONE), 0);

        assertThatThrownBy(() -> homes.enter(DESK, child, parent, home("aunt", Nights.NONE), 0))
                .isInstanceOf(Overtaken.class);
        assertThat(homes.of(NURSE, child).get(parent).home().relation()).isEqualTo("mother");
    }

    @Test
    void namesEveryFieldThatIsOutOfBounds() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL).account();
        var bad = new Home(
                " ",
                Authority.NOT_KNOWN,
                "a".repeat(301),
                "i".repeat(61),
                new Nights(Set.of(), Set.of(), Optional.of(TODAY.plusYears(3))),
                false,
                false,
                "n".repeat(2001));

        assertThatThrownBy(() -> homes.enter(DESK, child, parent, bad, 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::field)
                                .containsExactly("relation", "address", "interpreter", "note", "turns"));
        var halfTurns = home("mother", new Nights(Set.of(), Set.of(DayOfWeek.MONDAY), Optional.empty()));
        assertThatThrownBy(() -> homes.enter(DESK, child, parent, halfTurns, 0)).isInstanceOf(Invalid.class);
    }

    @Test
    void isAboutCaregiversOfThisChildAlone() {
        var child = Children.enter(register);
        assertThatThrownBy(() -> homes.enter(DESK, child, AccountId.random(), home("x", Nights.NONE), 0))
                .isInstanceOf(NotAvailable.class);
    }

    @Test
    void isReadByTheTeamAndChangedByTheOfficeAlone() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL);

        assertThatThrownBy(() -> homes.of(parent, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> homes.enter(parent, child, parent.account(), home("mother", Nights.NONE), 0))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> homes.enter(NURSE, child, parent.account(), home("mother", Nights.NONE), 0))
                .isInstanceOf(NotAvailable.class);
    }

    @Test
    void tellsTheFamilyInWhichHomeADayIsAndForgetsTheHomeOfWhoCaresNoMore() {
        var child = Children.enter(register);
        var one = Children.caregiver(households, child, Reach.FULL);
        var other = Children.caregiver(households, child, Reach.FULL);
        var day = TODAY.getDayOfWeek();
        homes.enter(DESK, child, one.account(), home("mother", Nights.everyWeek(Set.of(day))), 0);
        assertThat(homes.nights(one, child).areKnown()).isFalse();
        homes.enter(DESK, child, other.account(), home("father", Nights.everyWeek(Set.of(day.plus(1)))), 0);

        assertThat(homes.nights(one, child).on(TODAY)).containsExactly(one.account());
        assertThat(homes.nights(one, child).on(TODAY.plusDays(1))).containsExactly(other.account());

        households.unlink(DESK, child, other.account());
        assertThat(homes.nights(one, child).areKnown()).isFalse();
        assertThat(homes.of(NURSE, child)).containsOnlyKeys(one.account());
    }
}
