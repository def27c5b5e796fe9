package org.hearthway.access.internal;

import java.util.Optional;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Helpers;
import org.hearthway.child.Households;
import org.hearthway.child.Safeguarding;
import org.springframework.stereotype.Component;

/** Asks {@link AccessTable}, with the child's household, its helpers and who is named for safeguarding as the only facts besides. */
@Component
class AccessGate implements Gate {

    private final Households households;
    private final Helpers helpers;
    private final Safeguarding safeguarding;
    private final AuditTrail trail;

    AccessGate(Households households, Helpers helpers, Safeguarding safeguarding, AuditTrail trail) {
        this.households = households;
        this.helpers = helpers;
        this.safeguarding = safeguarding;
        this.trail = trail;
    }

    @Override
    public boolean allows(Viewer viewer, Action action, ChildId child) {
        if (!action.isAboutAChild()) {
            throw new IllegalArgumentException(action + " is not about a child");
        }
        if (viewer instanceof Viewer.Person person) {
            return allowsPerson(person, action, child);
        }
        if (viewer instanceof Viewer.LinkHolder holder) {
            return holder.child().equals(child)
                    && AccessTable.grantedToLink().contains(action)
                    && households.exists(child);
        }
        // no work of the program needs to know of a flag
        return viewer instanceof Viewer.Machine && action != Action.SAFEGUARD && households.exists(child);
    }

    private boolean allowsPerson(Viewer.Person person, Action action, ChildId child) {
        if (grantedByRole(person, action) || grantedByName(person, action)) {
            return households.exists(child) && !isOfTheFamily(person, action, child);
        }
        return grantedToCaregiver(person, action, child) || grantedToHelper(person, action, child);
    }

    /** Somebody of the team whose own child this is reads nothing here of the other home. */
    private boolean isOfTheFamily(Viewer.Person person, Action action, ChildId child) {
        return AccessTable.closedToFamily().contains(action)
                && person.is(Role.CAREGIVER)
                && households.reach(person.account(), child).isPresent();
    }

    private boolean grantedToCaregiver(Viewer.Person person, Action action, ChildId child) {
        return person.is(Role.CAREGIVER)
                && households
                        .reach(person.account(), child)
                        .filter(reach -> AccessTable.granted(reach).contains(action))
                        .isPresent();
    }

    private boolean grantedToHelper(Viewer.Person person, Action action, ChildId child) {
        return person.is(Role.HELPER)
                && AccessTable.grantedToHelper().contains(action)
                && helpers.reaches(person.account(), child);
    }

    private boolean grantedByName(Viewer.Person person, Action action) {
        return person.roles().stream()
                        .anyMatch(role -> AccessTable.grantedToNamed(role).contains(action))
                && safeguarding.isNamed(person.account());
    }

    private void hold(Viewer.Person person, ChildId child) {
        if (person.is(Role.CAREGIVER)) {
            households.hold(person.account(), child);
        }
        if (person.is(Role.HELPER)) {
            helpers.hold(person.account(), child);
        }
    }

    private static boolean grantedByRole(Viewer.Person person, Action action) {
        return person.roles().stream()
                .anyMatch(role -> AccessTable.granted(role).contains(action));
    }

    @Override
    public boolean allows(Viewer viewer, Action action) {
        if (action.isAboutAChild()) {
            throw new IllegalArgumentException(action + " is about a child");
        }
        return viewer instanceof Viewer.Machine
                || (viewer instanceof Viewer.Person person && grantedByRole(person, action));
    }

    /** A relation that is asked here is acted on in the same transaction, and cannot end in between. */
    @Override
    public void require(Viewer viewer, Action action, ChildId child) {
        if (viewer instanceof Viewer.Person person && !AccessTable.onlyLooking().contains(action)) {
            hold(person, child);
        }
        if (!allows(viewer, action, child)) {
            trail.refused(viewer, action, Optional.of(child));
            throw new NotAvailable();
        }
    }

    @Override
    public void require(Viewer viewer, Action action) {
        if (!allows(viewer, action)) {
            trail.refused(viewer, action, Optional.empty());
            throw new NotAvailable();
        }
    }
}
