package org.hearthway.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.child.Households.Reach;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class HouseholdsTests {

    @Autowired
    private Households households;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Gate gate;

    private final org.hearthway.base.Viewer.Person administrator = People.with(Role.ADMINISTRATOR);

    @Test
    void aCaregiverSeesTheChildOnceLinkedAndNoLongerOnceUnlinked() {
        var child = Children.enter(register);
        var parent = People.with(Role.CAREGIVER);
        assertThat(register.mine(parent)).isEmpty();

        households.link(administrator, child, parent.account(), Reach.FULL);
        assertThat(register.mine(parent)).extracting(Child::id).containsExactly(child);
        assertThat(register.get(parent, child).name()).isEqualTo("Wren");

        households.unlink(administrator, child, parent.account());
        assertThat(register.mine(parent)).isEmpty();
        assertThatThrownBy(() -> register.get(parent, child)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void sayingItAgainChangesTheReach() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL);
        assertThat(gate.allows(parent, Action.LOG_SESSION, child)).isTrue();

        households.link(administrator, child, parent.account(), Reach.VIEW_ONLY);

        assertThat(gate.allows(parent, Action.LOG_SESSION, child)).isFalse();
        assertThat(households.caregivers(administrator, child))
                .containsExactly(new Households.Caregiver(parent.account(), Reach.VIEW_ONLY));
    }

    @Test
    void aTherapistLinksNobody() {
        var child = Children.enter(register);
        var therapist = People.with(Role.THERAPIST);
        var friend = People.with(Role.CAREGIVER).account();

        assertThatThrownBy(() -> households.link(therapist, child, friend, Reach.FULL))
                .isInstanceOf(NotAvailable.class);
        assertThat(households.reach(friend, child)).isEmpty();
    }
}
