package org.hearthway.reminder.internal;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.Links;
import org.hearthway.access.NewAccount;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.pump.engine.RefillWindow;

/** Families, accounts, fills and links that a test lays down by hand. */
final class KnownFamily {

    final Map<ChildId, List<Households.Caregiver>> caregivers = new HashMap<>();
    final Map<AccountId, Account> accounts = new HashMap<>();
    final Map<ChildId, RefillWindow> refills = new HashMap<>();
    final Map<UUID, Instant> linkEnds = new HashMap<>();
    final Map<ChildId, Set<LocalDate>> looksAtHome = new HashMap<>();
    final Map<ChildId, List<DueDays.Check>> checks = new HashMap<>();
    final Map<ChildId, Set<LocalDate>> steps = new HashMap<>();

    /** A caregiver who may answer. */
    Account caregiver(ChildId child, String email, Language language, ZoneId zone) {
        var account = new Account(
                AccountId.random(),
                "Pat Example",
                email,
                "555-0142",
                Set.of(Role.CAREGIVER),
                language,
                zone,
                Account.State.ACTIVE);
        accounts.put(account.id(), account);
        var all = new java.util.ArrayList<>(caregivers.getOrDefault(child, List.of()));
        all.add(new Households.Caregiver(account.id(), Households.Reach.FULL));
        caregivers.put(child, all);
        return account;
    }

    DueDays dueDays() {
        return new DueDays() {
            @Override
            public Set<LocalDate> atHome(ChildId child) {
                return looksAtHome.getOrDefault(child, Set.of());
            }

            @Override
            public Set<LocalDate> steps(ChildId child) {
                return steps.getOrDefault(child, Set.of());
            }

            @Override
            public List<Check> checks(ChildId child) {
                return checks.getOrDefault(child, List.of());
            }
        };
    }

    Households households() {
        return new Households() {
            @Override
            public List<Caregiver> caregivers(Viewer viewer, ChildId child) {
                return caregivers.getOrDefault(child, List.of());
            }

            @Override
            public Optional<Reach> reach(AccountId account, ChildId child) {
                return caregivers.getOrDefault(child, List.of()).stream()
                        .filter(caregiver -> caregiver.account().equals(account))
                        .map(Caregiver::reach)
                        .findFirst();
            }

            @Override
            public void hold(AccountId account, ChildId child) {
                // nobody's reach ends here
            }

            @Override
            public boolean exists(ChildId child) {
                return true;
            }

            @Override
            public void link(Viewer viewer, ChildId child, AccountId account, Reach reach) {
                throw new UnsupportedOperationException();
            }

            @Override
            public void unlink(Viewer viewer, ChildId child, AccountId account) {
                throw new UnsupportedOperationException();
            }
        };
    }

    Accounts accounts() {
        return new Accounts() {
            @Override
            public List<Account> all(Viewer viewer) {
                return List.copyOf(accounts.values());
            }

            @Override
            public Map<AccountId, Account> byId(Viewer viewer, Collection<AccountId> ids) {
                var found = new HashMap<>(accounts);
                found.keySet().retainAll(Set.copyOf(ids));
                return found;
            }

            @Override
            public Invitation invite(Viewer viewer, NewAccount account) {
                throw new UnsupportedOperationException();
            }

            @Override
            public Invitation renewLink(Viewer viewer, AccountId account) {
                throw new UnsupportedOperationException();
            }

            @Override
            public void disable(Viewer viewer, AccountId account) {
                throw new UnsupportedOperationException();
            }

            @Override
            public void enable(Viewer viewer, AccountId account) {
                throw new UnsupportedOperationException();
            }

            @Override
            public void speak(Viewer.Person viewer, Language language) {
                throw new UnsupportedOperationException();
            }
        };
    }

    Links links() {
        return new Links() {
            @Override
            public Link create(Purpose purpose, UUID subject, Instant expires) {
                var id = UUID.randomUUID();
                linkEnds.put(id, expires);
                return new Link(id, purpose, subject, expires);
            }

            @Override
            public String token(UUID link) {
                return "token-of-" + link;
            }

            @Override
            public Optional<Link> open(Purpose purpose, String token) {
                throw new UnsupportedOperationException();
            }

            @Override
            public boolean use(UUID link) {
                throw new UnsupportedOperationException();
            }

            @Override
            public void extend(UUID link, Instant expires) {
                linkEnds.put(link, expires);
            }

            @Override
            public void revoke(Purpose purpose, UUID subject) {
                throw new UnsupportedOperationException();
            }
        };
    }

    Pumps pumps() {
        var pumps = mock(Pumps.class);
        when(pumps.refill(any(), any()))
                .thenAnswer(asked -> Optional.ofNullable(refills.get(asked.<ChildId>getArgument(1)))
                        .map(window -> new Refill(window.filled(), Optional.of(window), false)));
        return pumps;
    }
}
