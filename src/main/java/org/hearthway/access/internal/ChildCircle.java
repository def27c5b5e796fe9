package org.hearthway.access.internal;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.Circle;
import org.hearthway.access.Links;
import org.hearthway.access.NewAccount;
import org.hearthway.access.internal.CircleTable.Field;
import org.hearthway.access.internal.CircleTable.Sight;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Helpers;
import org.hearthway.child.Homes;
import org.hearthway.child.Homes.Entered;
import org.hearthway.child.Households;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class ChildCircle implements Circle {

    private static final Viewer FIELDS = new Viewer.Machine("fields of a caregiver");
    private static final Duration LINK_LASTS = Duration.ofDays(7);

    private final Households households;
    private final Homes homes;
    private final Helpers helpers;
    private final AccountRows rows;
    private final Links links;
    private final Gate gate;
    private final AuditTrail trail;
    private final ClinicSettings clinic;
    private final Clock clock;

    ChildCircle(
            Households households,
            Homes homes,
            Helpers helpers,
            AccountRows rows,
            Links links,
            Gate gate,
            AuditTrail trail,
            ClinicSettings clinic,
            Clock clock) {
        this.households = households;
        this.homes = homes;
        this.helpers = helpers;
        this.rows = rows;
        this.links = links;
        this.gate = gate;
        this.trail = trail;
        this.clinic = clinic;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Member> members(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var team = gate.allows(viewer, Action.SEE_HOMES, child);
        var known = homes.of(FIELDS, child);
        var linked = households.caregivers(FIELDS, child);
        var accounts = accounts(linked.stream().map(Households.Caregiver::account));
        var members = new ArrayList<Member>();
        for (var caregiver : linked) {
            var account = accounts.get(caregiver.account());
            if (account != null) {
                var home = Optional.ofNullable(known.get(account.id()));
                var sight = team ? Sight.TEAM : sight(viewer, account.id(), known);
                members.add(member(account, caregiver.reach(), home, CircleTable.shown(sight)));
            }
        }
        return List.copyOf(members);
    }

    private static Sight sight(Viewer viewer, AccountId looked, Map<AccountId, Entered> known) {
        if (!(viewer instanceof Viewer.Person person)) {
            return Sight.OTHER;
        }
        if (person.account().equals(looked)) {
            return Sight.OWN;
        }
        var apart = is(known, person.account(), Homes.Home::keptApart);
        return !apart && is(known, looked, Homes.Home::sharesPhone) ? Sight.SHARED_WITH : Sight.OTHER;
    }

    private static boolean is(
            Map<AccountId, Entered> known, AccountId account, java.util.function.Predicate<Homes.Home> what) {
        return Optional.ofNullable(known.get(account))
                .map(Entered::home)
                .filter(what)
                .isPresent();
    }

    private static Member member(Account account, Households.Reach reach, Optional<Entered> home, Set<Field> shown) {
        return new Member(
                account.id(),
                account.name(),
                reach,
                home.map(entered -> entered.home().relation()).filter(r -> shown.contains(Field.RELATION)),
                Optional.of(account.phone()).filter(phone -> !phone.isBlank()).filter(p -> shown.contains(Field.PHONE)),
                Optional.of(account.email()).filter(e -> shown.contains(Field.EMAIL)),
                Optional.of(account.language()).filter(l -> shown.contains(Field.LANGUAGE)),
                Optional.of(account.zone()).filter(z -> shown.contains(Field.ZONE)),
                home.filter(h -> shown.contains(Field.HOME)));
    }

    private Map<AccountId, Account> accounts(Stream<AccountId> ids) {
        return AccountRows.byId(rows.findAll(ids.collect(Collectors.toSet())));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Aide> helpers(Viewer viewer, ChildId child) {
        var all = helpers.of(viewer, child);
        var accounts = accounts(all.stream()
                .flatMap(helper ->
                        Stream.of(helper.account(), helper.help().consent().by())));
        return all.stream()
                .map(helper -> new Aide(
                        helper,
                        name(accounts, helper.account()),
                        name(accounts, helper.help().consent().by())))
                .toList();
    }

    private static String name(Map<AccountId, Account> accounts, AccountId id) {
        return Optional.ofNullable(accounts.get(id)).map(Account::name).orElse("");
    }

    @Override
    @Transactional
    public Optional<Accounts.Invitation> askToHelp(Viewer viewer, ChildId child, NewHelper asked) {
        gate.require(viewer, Action.LINK_HELPER, child);
        var account =
                new NewAccount(asked.name(), asked.email(), "", Set.of(Role.HELPER), asked.language(), clinic.zone());
        check(viewer, child, asked, account);
        var known = rows.findByEmail(asked.email());
        if (known.isPresent()) {
            var there = known.get().account();
            if (!there.roles().contains(Role.HELPER) || there.state() == Account.State.DISABLED) {
                throw new Invalid(taken());
            }
            helpers.link(viewer, child, there.id(), asked.help(), last(viewer, child, there.id()));
            return Optional.empty();
        }
        var id = AccountId.random();
        try {
            rows.insert(id, account);
        } catch (DuplicateKeyException takenAtTheSameMoment) {
            throw new Invalid(taken());
        }
        trail.happened(viewer, "invited: account " + id);
        helpers.link(viewer, child, id, asked.help(), 0);
        var link = links.create(
                Links.Purpose.SET_PASSWORD, id.value(), clock.instant().plus(LINK_LASTS));
        return Optional.of(
                new Accounts.Invitation(id, clinic.baseUrl() + "/welcome/" + links.token(link.id()), link.expires()));
    }

    /** Says everything that is wrong at once. */
    private void check(Viewer viewer, ChildId child, NewHelper asked, NewAccount account) {
        var problems = new ArrayList<>(AccountRules.check(account));
        try {
            helpers.check(viewer, child, asked.help());
        } catch (Invalid invalid) {
            problems.addAll(invalid.problems());
        }
        Invalid.ifAny(problems);
    }

    private long last(Viewer viewer, ChildId child, AccountId account) {
        return helpers.of(viewer, child).stream()
                .filter(helper -> helper.account().equals(account))
                .mapToLong(Helpers.Helper::number)
                .findFirst()
                .orElse(0);
    }

    private static Problem taken() {
        return Problem.at("email", "access.problem.email-taken");
    }
}
