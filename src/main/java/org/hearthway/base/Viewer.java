package org.hearthway.base;

import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * On whose behalf a service is called. Every public service method that touches a child's data takes one,
 * because work handed to an executor loses a sign-in bound to the thread.
 */
public sealed interface Viewer {

    /** Short form for the audit trail: who, never a name. */
    String tag();

    /** A signed-in person. */
    record Person(AccountId account, String name, Set<Role> roles, Language language, ZoneId zone) implements Viewer {
        public Person {
            roles = Set.copyOf(roles);
        }

        /** Whether the person holds the role. */
        public boolean is(Role role) {
            return roles.contains(role);
        }

        /** Whether the person works at the clinic. */
        public boolean isStaff() {
            return roles.stream().anyMatch(Role::isStaff);
        }

        @Override
        public String tag() {
            return "person:" + account;
        }
    }

    /** The program itself, doing scheduled work; {@code task} says which. */
    record Machine(String task) implements Viewer {
        @Override
        public String tag() {
            return "machine:" + task;
        }
    }

    /**
     * Somebody who holds a link for one visit and has not signed in; may do what the link is for, to that child only.
     *
     * @param person for whom the link was made, when that is known
     */
    record LinkHolder(UUID link, ChildId child, Optional<AccountId> person) implements Viewer {

        /** Holder of a link of which it is not known for whom it was made. */
        public LinkHolder(UUID link, ChildId child) {
            this(link, child, Optional.empty());
        }

        @Override
        public String tag() {
            return "link:" + link;
        }
    }
}
