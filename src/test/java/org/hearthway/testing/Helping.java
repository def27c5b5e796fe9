package org.hearthway.testing;

import java.time.LocalDate;
import java.util.Objects;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.child.Helpers;
import org.hearthway.child.Helpers.Consent;
import org.hearthway.child.Helpers.Help;
import org.hearthway.child.Helpers.Kind;
import org.hearthway.child.Households;

/** Helpers for tests: somebody outside the clinic whom a fresh caregiver of the child lets in. */
public final class Helping {

    private Helping() {}

    /** Lets the account help the child until a day; the consent is of the day before the clock's. */
    public static void until(
            LocalDate lastDay, Helpers helpers, Households households, ChildId child, AccountId account) {
        var parent = Objects.requireNonNull(Children.caregiver(households, child, Households.Reach.FULL));
        helpers.link(
                People.with(Role.COORDINATOR),
                child,
                account,
                new Help(Kind.SCHOOL_AIDE, lastDay, new Consent(parent.account(), lastDay.minusDays(60))),
                0);
    }
}
