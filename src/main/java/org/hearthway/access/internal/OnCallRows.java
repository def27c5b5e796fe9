package org.hearthway.access.internal;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.OnCall;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The orders as they were said, one version after the other. */
@Service
@Transactional
class OnCallRows implements OnCall {

    private static final String OFFICE = "OFFICE";
    private static final String OUTSIDE = "OUTSIDE";

    private final JdbcClient jdbc;
    private final AccountRows accounts;
    private final Gate gate;
    private final AuditTrail trail;
    private final Clock clock;

    OnCallRows(JdbcClient jdbc, AccountRows accounts, Gate gate, AuditTrail trail, Clock clock) {
        this.jdbc = jdbc;
        this.accounts = accounts;
        this.gate = gate;
        this.trail = trail;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Kept now(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return jdbc.sql("select * from on_call where version = (select max(version) from on_call)")
                .query((row, n) -> {
                    var version = row.getLong("version");
                    var order = new Order(
                            row.getInt("minutes"),
                            people(version, OFFICE),
                            people(version, OUTSIDE),
                            Optional.ofNullable(row.getObject("missed", UUID.class))
                                    .map(AccountId::new));
                    return new Kept(
                            order,
                            Optional.of(new AccountId(row.getObject("said_by", UUID.class))),
                            Optional.of(row.getObject("said_at", OffsetDateTime.class)
                                    .toInstant()),
                            version);
                })
                .optional()
                .orElseGet(() -> new Kept(Order.unsaid(), Optional.empty(), Optional.empty(), 0));
    }

    private List<AccountId> people(long version, String hours) {
        return jdbc
                .sql("select account from on_call_person where version = :version and hours = :hours order by place")
                .param("version", version)
                .param("hours", hours)
                .query(UUID.class)
                .list()
                .stream()
                .map(AccountId::new)
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Account> able(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return able();
    }

    private static boolean isAble(Account account) {
        return account.state() == Account.State.ACTIVE
                && account.roles().stream()
                        .anyMatch(role -> AccessTable.granted(role).contains(Action.WORK_NEEDS));
    }

    @Override
    public void say(Viewer viewer, Order order, long seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        if (!(viewer instanceof Viewer.Person person)) {
            throw new NotAvailable();
        }
        Invalid.ifAny(problems(order));
        if (now(viewer).version() != seen) {
            throw new Overtaken();
        }
        try {
            insert(person, order, seen + 1);
        } catch (DuplicateKeyException saidAtTheSameMoment) {
            throw new Overtaken();
        }
        trail.happened(viewer, "on-call order said: version " + (seen + 1));
    }

    private List<Problem> problems(Order order) {
        var problems = new ArrayList<Problem>();
        if (order.minutes() < LEAST_MINUTES || order.minutes() > MOST_MINUTES) {
            problems.add(Problem.at("minutes", "access.on-call.problem.minutes", LEAST_MINUTES, MOST_MINUTES));
        }
        var able = able().stream().map(Account::id).collect(Collectors.toSet());
        problems.addAll(problems("office", order.office(), able));
        problems.addAll(problems("outside", order.outside(), able));
        if (order.missed().filter(person -> !able.contains(person)).isPresent()) {
            problems.add(Problem.at("missed", "access.on-call.problem.missed"));
        }
        return problems;
    }

    private static List<Problem> problems(String field, List<AccountId> people, Set<AccountId> able) {
        var problems = new ArrayList<Problem>();
        if (people.isEmpty() || people.size() > MOST_PEOPLE) {
            problems.add(Problem.at(field, "access.on-call.problem.size", MOST_PEOPLE, people.size()));
        }
        if (new HashSet<>(people).size() < people.size()) {
            problems.add(Problem.at(field, "access.on-call.problem.twice"));
        }
        for (int place = 0; place < people.size(); place++) {
            if (!able.contains(people.get(place))) {
                problems.add(Problem.at(field, "access.on-call.problem.not-able", place + 1));
            }
        }
        return problems;
    }

    private List<Account> able() {
        return accounts.all().stream()
                .map(AccountRows.Stored::account)
                .filter(OnCallRows::isAble)
                .toList();
    }

    private void insert(Viewer.Person person, Order order, long version) {
        jdbc.sql("insert into on_call (version, minutes, missed, said_by, said_at)"
                        + " values (:version, :minutes, :missed, :by, :at)")
                .param("version", version)
                .param("minutes", order.minutes())
                .param("missed", order.missed().map(AccountId::value).orElse(null))
                .param("by", person.account().value())
                .param("at", clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                .update();
        insert(version, OFFICE, order.office());
        insert(version, OUTSIDE, order.outside());
    }

    private void insert(long version, String hours, List<AccountId> people) {
        for (int place = 0; place < people.size(); place++) {
            jdbc.sql("insert into on_call_person (version, hours, place, account)"
                            + " values (:version, :hours, :place, :account)")
                    .param("version", version)
                    .param("hours", hours)
                    .param("place", place)
                    .param("account", people.get(place).value())
                    .update();
        }
    }
}
