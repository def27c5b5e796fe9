package org.hearthway.access.internal;

import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Helpers;
import org.springframework.stereotype.Component;

/** Where a person begins after signing in. */
@Component
class Landing {

    static final String NO_CHILD = "/no-child-yet";

    private final ChildRegister children;
    private final Helpers helpers;

    Landing(ChildRegister children, Helpers helpers) {
        this.children = children;
        this.helpers = helpers;
    }

    String of(Viewer.Person person) {
        if (person.is(Role.THERAPIST) || person.is(Role.PHYSICIAN) || person.is(Role.NURSE)) {
            return "/staff/needs";
        }
        if (person.is(Role.COORDINATOR)) {
            return "/staff/desk";
        }
        if (person.is(Role.ADMINISTRATOR)) {
            return "/staff/clinic";
        }
        return children.mine(person).stream()
                .findFirst()
                .map(child -> "/my/" + child.id() + "/today")
                .or(() -> helpers.mine(person).stream().findFirst().map(child -> "/help/" + child.id() + "/today"))
                .orElse(NO_CHILD);
    }
}
