package org.hearthway.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households.Reach;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class SafeguardingTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Safeguarding safeguarding;

    @Autowired
    private Gate gate;

    @Autowired
    private AuditTrail trail;

    private Viewer.Person named(Role first, Role... more) {
        var person = People.with(first, more);
        safeguarding.name(ADMINISTRATOR, person.account(), true);
        return person;
    }

    @Test
    void keepsEveryWordOfNamedStaffWithWhoAndWhen() {
        var child = Children.enter(register);
        var nurse = named(Role.NURSE);
        var physician = named(Role.PHYSICIAN);
        safeguarding.say(nurse, child, true, "Told at the visit.", 0);
        assertThatThrownBy(() -> safeguarding.say(physician, child, false, "Cleared.", 0))
                .isInstanceOf(Overtaken.class);

        safeguarding.say(physician, child, false, "Cleared.", 1);

        assertThat(safeguarding.of(nurse, child))
                .satisfiesExactly(lowered -> assertThat(lowered.raised()).isFalse(), raised -> {
                    assertThat(raised.raised()).isTrue();
                    assertThat(raised.words()).isEqualTo("Told at the visit.");
                    assertThat(raised.by()).isEqualTo(nurse.account());
                    assertThat(raised.at()).isEqualTo(HearthwayTest.START);
                });
    }

    @Test
    void leavesNoLineInTheTrail() {
        var child = Children.enter(register);
        var nurse = named(Role.NURSE);
        var before = trail.newest(ADMINISTRATOR, 5000);

        safeguarding.say(nurse, child, true, "Told at the visit.", 0);
        safeguarding.of(nurse, child);

        assertThat(trail.newest(ADMINISTRATOR, 5000)).isEqualTo(before);
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void answersWhoIsNotNamedTheSameWhetherThereIsAFlagOrNot(Role role) {
        var flagged = Children.enter(register);
        var plain = Children.enter(register);
        safeguarding.say(named(Role.NURSE), flagged, true, "Told at the visit.", 0);
        var person = People.with(role);
        households.link(ADMINISTRATOR, flagged, person.account(), Reach.FULL);
        households.link(ADMINISTRATOR, plain, person.account(), Reach.FULL);

        for (var child : java.util.List.of(flagged, plain, ChildId.random())) {
            assertThat(gate.allows(person, Action.SAFEGUARD, child)).isFalse();
            assertThatThrownBy(() -> safeguarding.of(person, child))
                    .isInstanceOf(NotAvailable.class)
                    .hasMessage("not available");
            assertThatThrownBy(() -> safeguarding.say(person, child, true, "x", 0))
                    .isInstanceOf(NotAvailable.class)
                    .hasMessage("not available");
        }
    }

    @Test
    void aNameCountsForStaffAloneAndNeverForTheOwnChild() {
        var child = Children.enter(register);
        var parentAndNurse = named(Role.CAREGIVER, Role.NURSE);
        households.link(ADMINISTRATOR, child, parentAndNurse.account(), Reach.VIEW_ONLY);

        assertThat(gate.allows(named(Role.CAREGIVER), Action.SAFEGUARD, child)).isFalse();
        assertThat(gate.allows(named(Role.ADMINISTRATOR), Action.SAFEGUARD, child))
                .isFalse();
        assertThat(gate.allows(parentAndNurse, Action.SAFEGUARD, child)).isFalse();
        assertThat(gate.allows(parentAndNurse, Action.SAFEGUARD, Children.enter(register)))
                .isTrue();
        assertThat(gate.allows(new Viewer.Machine("anything"), Action.SAFEGUARD, child))
                .isFalse();
    }

    @Test
    void endsWithTheName() {
        var child = Children.enter(register);
        var nurse = named(Role.NURSE);
        safeguarding.say(nurse, child, true, "Told at the visit.", 0);

        safeguarding.name(ADMINISTRATOR, nurse.account(), false);

        assertThatThrownBy(() -> safeguarding.of(nurse, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> safeguarding.name(nurse, nurse.account(), true))
                .isInstanceOf(NotAvailable.class);
    }

    @Test
    void asksWhy() {
        var child = Children.enter(register);
        var nurse = named(Role.NURSE);

        assertThatThrownBy(() -> safeguarding.say(nurse, child, true, " ", 0)).isInstanceOf(Invalid.class);
        assertThatThrownBy(() -> safeguarding.say(nurse, child, true, "w".repeat(2001), 0))
                .isInstanceOf(Invalid.class);
    }
}
