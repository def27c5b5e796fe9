package org.hearthway.reminder.internal;

import java.util.List;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.springframework.stereotype.Component;

/** Whom to remind: the caregivers who may answer for the child and whose account is open. */
@Component
class Family {

    static final Viewer MACHINE = new Viewer.Machine("reminders");

    private final Households households;
    private final Accounts accounts;

    Family(Households households, Accounts accounts) {
        this.households = households;
        this.accounts = accounts;
    }

    List<Account> of(ChildId child) {
        var answering = households.caregivers(MACHINE, child).stream()
                .filter(caregiver -> caregiver.reach() == Reach.FULL)
                .map(Households.Caregiver::account)
                .toList();
        return accounts.byId(MACHINE, answering).values().stream()
                .filter(account -> account.state() != Account.State.DISABLED)
                .toList();
    }

    /** The person as it stands now, when messages may still go there. */
    Optional<Account> find(AccountId person) {
        return Optional.ofNullable(accounts.byId(MACHINE, List.of(person)).get(person))
                .filter(account -> account.state() != Account.State.DISABLED);
    }
}
