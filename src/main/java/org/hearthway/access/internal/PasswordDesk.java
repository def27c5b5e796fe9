package org.hearthway.access.internal;

import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.access.Links;
import org.hearthway.access.Passwords;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class PasswordDesk implements Passwords {

    private final AccountRows rows;
    private final Links links;
    private final OpenSignIns open;
    private final SignInDelays delays;
    private final PasswordRules rules;
    private final PasswordEncoder encoder;
    private final AuditTrail trail;

    PasswordDesk(
            AccountRows rows,
            Links links,
            OpenSignIns open,
            SignInDelays delays,
            PasswordRules rules,
            PasswordEncoder encoder,
            AuditTrail trail) {
        this.rows = rows;
        this.links = links;
        this.open = open;
        this.delays = delays;
        this.rules = rules;
        this.encoder = encoder;
        this.trail = trail;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Account> opens(String token) {
        return links.open(Links.Purpose.SET_PASSWORD, token)
                .flatMap(link -> rows.find(new AccountId(link.subject())))
                .map(AccountRows.Stored::account)
                .filter(account -> account.state() != Account.State.DISABLED);
    }

    @Override
    @Transactional
    public void set(String token, String password) {
        var account = opens(token).orElseThrow(NotAvailable::new);
        var link = links.open(Links.Purpose.SET_PASSWORD, token).orElseThrow(NotAvailable::new);
        rules.check(password, account.name(), account.email()).ifPresent(problem -> {
            throw new Invalid(problem);
        });
        if (!links.use(link.id())) {
            throw new NotAvailable();
        }
        var stored = rows.find(account.id()).orElseThrow(NotAvailable::new);
        if (!rows.setPassword(stored, encoder.encode(password), Account.State.ACTIVE)) {
            throw new NotAvailable();
        }
        open.endAll(account.id());
        delays.forget(account.id());
        trail.happened(SessionPerson.viewer(account), "password set: account " + account.id());
    }
}
