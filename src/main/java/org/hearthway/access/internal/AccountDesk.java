package org.hearthway.access.internal;

import java.time.Clock;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.Links;
import org.hearthway.access.NewAccount;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class AccountDesk implements Accounts {

    private static final Duration LINK_LASTS = Duration.ofDays(7);

    private final AccountRows rows;
    private final Links links;
    private final OpenSignIns open;
    private final Gate gate;
    private final AuditTrail trail;
    private final ClinicSettings clinic;
    private final Clock clock;

    AccountDesk(
            AccountRows rows,
            Links links,
            OpenSignIns open,
            Gate gate,
            AuditTrail trail,
            ClinicSettings clinic,
            Clock clock) {
        this.rows = rows;
        this.links = links;
        this.open = open;
        this.gate = gate;
        this.trail = trail;
        this.clinic = clinic;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Account> all(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_ACCOUNTS);
        return rows.all().stream().map(AccountRows.Stored::account).toList();
    }

    @Override
    @Transactional(readOnly = true)
    public Map<AccountId, Account> byId(Viewer viewer, Collection<AccountId> ids) {
        // everybody who works with children may know whom to write to
        gate.require(viewer, Action.LIST_CHILDREN);
        return AccountRows.byId(rows.findAll(ids));
    }

    @Override
    @Transactional
    public Invitation invite(Viewer viewer, NewAccount account) {
        gate.require(viewer, Action.MANAGE_ACCOUNTS);
        var problems = AccountRules.check(account);
        if (problems.isEmpty() && rows.findByEmail(account.email()).isPresent()) {
            problems = List.of(taken());
        }
        Invalid.ifAny(problems);
        var id = AccountId.random();
        try {
            rows.insert(id, account);
        } catch (DuplicateKeyException takenAtTheSameMoment) {
            throw new Invalid(taken());
        }
        trail.happened(viewer, "invited: account " + id);
        return invitation(id);
    }

    private static Problem taken() {
        return Problem.at("email", "access.problem.email-taken");
    }

    private Invitation invitation(AccountId id) {
        var link = links.create(
                Links.Purpose.SET_PASSWORD, id.value(), clock.instant().plus(LINK_LASTS));
        return new Invitation(id, clinic.baseUrl() + "/welcome/" + links.token(link.id()), link.expires());
    }

    @Override
    @Transactional
    public Invitation renewLink(Viewer viewer, AccountId account) {
        gate.require(viewer, Action.MANAGE_ACCOUNTS);
        if (find(account).account().state() == Account.State.DISABLED) {
            throw new Invalid(Problem.at("", "access.problem.disabled"));
        }
        links.revoke(Links.Purpose.SET_PASSWORD, account.value());
        trail.happened(viewer, "link renewed: account " + account);
        return invitation(account);
    }

    private AccountRows.Stored find(AccountId account) {
        return rows.find(account).orElseThrow(NotAvailable::new);
    }

    @Override
    @Transactional
    public void disable(Viewer viewer, AccountId account) {
        gate.require(viewer, Action.MANAGE_ACCOUNTS);
        if (viewer instanceof Viewer.Person person && person.account().equals(account)) {
            throw new Invalid(Problem.at("", "access.problem.own-account"));
        }
        set(account, Account.State.DISABLED);
        links.revoke(Links.Purpose.SET_PASSWORD, account.value());
        open.endAll(account);
        trail.happened(viewer, "disabled: account " + account);
    }

    @Override
    @Transactional
    public void enable(Viewer viewer, AccountId account) {
        gate.require(viewer, Action.MANAGE_ACCOUNTS);
        var hasPassword = find(account).passwordHash() != null;
        set(account, hasPassword ? Account.State.ACTIVE : Account.State.INVITED);
        trail.happened(viewer, "enabled: account " + account);
    }

    @Override
    @Transactional
    public void speak(Viewer.Person viewer, Language language) {
        if (!rows.setLanguage(find(viewer.account()), language)) {
            throw new Overtaken();
        }
    }

    private void set(AccountId account, Account.State state) {
        if (!rows.setState(find(account), state)) {
            throw new Overtaken();
        }
    }
}
