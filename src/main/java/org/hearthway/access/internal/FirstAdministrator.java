package org.hearthway.access.internal;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.Account;
import org.hearthway.access.Links;
import org.hearthway.access.NewAccount;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** How a clinic that has no administrator yet gets its first: by a link that works once, for whoever starts it. */
@Component
class FirstAdministrator {

    private static final Duration LASTS = Duration.ofDays(1);
    /** The clinic itself, which has no identifier: links of this purpose are about nobody yet. */
    private static final UUID NOBODY = new UUID(0, 0);

    private final AccountRows rows;
    private final Links links;
    private final PasswordRules rules;
    private final PasswordEncoder encoder;
    private final AuditTrail trail;
    private final ClinicSettings clinic;
    private final Clock clock;

    FirstAdministrator(
            AccountRows rows,
            Links links,
            PasswordRules rules,
            PasswordEncoder encoder,
            AuditTrail trail,
            ClinicSettings clinic,
            Clock clock) {
        this.rows = rows;
        this.links = links;
        this.rules = rules;
        this.encoder = encoder;
        this.trail = trail;
        this.clinic = clinic;
        this.clock = clock;
    }

    /** A fresh link, earlier ones die; empty once there is an administrator. */
    @Transactional
    Optional<String> invite() {
        links.revoke(Links.Purpose.FIRST_ADMINISTRATOR, NOBODY);
        if (rows.anyActive(Role.ADMINISTRATOR)) {
            return Optional.empty();
        }
        var link = links.create(
                Links.Purpose.FIRST_ADMINISTRATOR, NOBODY, clock.instant().plus(LASTS));
        return Optional.of(clinic.baseUrl() + "/welcome/" + links.token(link.id()));
    }

    boolean opens(String token) {
        return links.open(Links.Purpose.FIRST_ADMINISTRATOR, token).isPresent() && !rows.anyActive(Role.ADMINISTRATOR);
    }

    /** Makes the account, ready to sign in. */
    @Transactional
    void become(String token, NewAccount account, String password) {
        var link = links.open(Links.Purpose.FIRST_ADMINISTRATOR, token)
                .filter(l -> !rows.anyActive(Role.ADMINISTRATOR))
                .orElseThrow(NotAvailable::new);
        var problems = new ArrayList<>(AccountRules.check(account));
        rules.check(password, account.name(), account.email()).ifPresent(problems::add);
        if (problems.isEmpty() && rows.findByEmail(account.email()).isPresent()) {
            problems.add(taken());
        }
        Invalid.ifAny(problems);
        if (!links.use(link.id())) {
            throw new NotAvailable();
        }
        var id = AccountId.random();
        try {
            rows.insert(id, account);
        } catch (DuplicateKeyException takenAtTheSameMoment) {
            throw new Invalid(taken());
        }
        var stored = rows.find(id).orElseThrow(NotAvailable::new);
        rows.setPassword(stored, encoder.encode(password), Account.State.ACTIVE);
        trail.happened(new Viewer.Machine("first-administrator"), "first administrator: account " + id);
    }

    private static Problem taken() {
        return Problem.at("email", "access.problem.email-taken");
    }
}
