package org.hearthway.access.internal;

import org.hearthway.base.AccountId;
import org.springframework.security.core.session.SessionInformation;
import org.springframework.security.core.session.SessionRegistry;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** Everything by which a person is signed in right now: sessions, and phones that stay signed in. */
@Component
class OpenSignIns {

    private final SessionRegistry sessions;
    private final RememberedPhones phones;

    OpenSignIns(SessionRegistry sessions, RememberedPhones phones) {
        this.sessions = sessions;
        this.phones = phones;
    }

    /** Ends all of them: tokens within the caller's transaction, sessions once it is committed. */
    void endAll(AccountId account) {
        phones.forgetAll(account);
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                sessions.getAllPrincipals().stream()
                        .filter(principal -> principal instanceof AccountPrincipal person && person.is(account))
                        .flatMap(principal -> sessions.getAllSessions(principal, false).stream())
                        .forEach(SessionInformation::expireNow);
            }
        });
    }
}
