package org.hearthway.task;

import java.util.List;
import org.hearthway.base.AccountId;
import org.hearthway.base.Role;

/** Who is to do a task. */
public sealed interface Assignee {

    /** The roles of the clinic that a task may be given to. */
    List<Role> ROLES = List.of(Role.COORDINATOR, Role.NURSE, Role.THERAPIST, Role.PHYSICIAN);

    /** Whether it is asked of the family. */
    default boolean isOfTheFamily() {
        return this instanceof Family || this instanceof Caregiver;
    }

    /** A person of the clinic. */
    record Person(AccountId account) implements Assignee {}

    /** Whoever of a role at the clinic gets to it first; one of {@link #ROLES}. */
    record AnyOf(Role role) implements Assignee {}

    /** All caregivers who act for the child: whoever does it first has done it for all. */
    record Family() implements Assignee {}

    /** One caregiver alone; the others do not see it. */
    record Caregiver(AccountId account) implements Assignee {}
}
