package org.hearthway.access.internal;

import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Viewer;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

@Component
class SessionPerson implements SignedIn {

    private final AccountRows rows;

    SessionPerson(AccountRows rows) {
        this.rows = rows;
    }

    @Override
    public Optional<Viewer.Person> person() {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        if (authentication == null || !(authentication.getPrincipal() instanceof AccountPrincipal principal)) {
            return Optional.empty();
        }
        return rows.find(principal.account())
                .map(AccountRows.Stored::account)
                .filter(account -> account.state() == Account.State.ACTIVE)
                .map(SessionPerson::viewer);
    }

    static Viewer.Person viewer(Account account) {
        return new Viewer.Person(account.id(), account.name(), account.roles(), account.language(), account.zone());
    }
}
