package org.hearthway.child.internal;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Safeguarding;
import org.springframework.context.annotation.Lazy;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class SafeguardingRows implements Safeguarding {

    static final int WORDS = 2000;

    private final JdbcClient jdbc;
    private final Gate gate;
    private final AuditTrail trail;
    private final Clock clock;

    /** The gate itself asks this module who is named, hence the lazy reference. */
    SafeguardingRows(JdbcClient jdbc, @Lazy Gate gate, AuditTrail trail, Clock clock) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.trail = trail;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Flag> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SAFEGUARD, child);
        return flags(child);
    }

    private List<Flag> flags(ChildId child) {
        return jdbc.sql("""
                        select raised, words, said_by, said_at, number from safeguarding_flag
                        where child = :child order by number desc
                        """)
                .param("child", child.value())
                .query((row, n) -> new Flag(
                        row.getBoolean("raised"),
                        row.getString("words"),
                        new AccountId(row.getObject("said_by", UUID.class)),
                        row.getObject("said_at", OffsetDateTime.class).toInstant(),
                        row.getLong("number")))
                .list();
    }

    @Override
    @Transactional
    public void say(Viewer viewer, ChildId child, boolean raised, String typed, long seen) {
        gate.require(viewer, Action.SAFEGUARD, child);
        if (!(viewer instanceof Viewer.Person person)) {
            throw new NotAvailable();
        }
        var words = typed.replace("\u0000", "").strip();
        if (words.isEmpty() || words.length() > WORDS) {
            throw new Invalid(Problem.at("words", "child.problem.safeguarding", WORDS));
        }
        var last = flags(child).stream().mapToLong(Flag::number).findFirst().orElse(0);
        if (last != seen) {
            throw new Overtaken();
        }
        try {
            jdbc.sql("""
                            insert into safeguarding_flag (child, number, raised, words, said_by, said_at)
                            values (:child, :number, :raised, :words, :by, :at)
                            """)
                    .param("child", child.value())
                    .param("number", seen + 1)
                    .param("raised", raised)
                    .param("words", words)
                    .param("by", person.account().value())
                    .param("at", now())
                    .update();
        } catch (DuplicateKeyException saidByAnotherAtTheSameMoment) {
            throw new Overtaken();
        }
    }

    @Override
    @Transactional(readOnly = true)
    public Set<AccountId> named(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_ACCOUNTS);
        return jdbc.sql("""
                        select p.account from safeguarding_person p
                        where p.named and p.number = (select max(n.number) from safeguarding_person n
                                                      where n.account = p.account)
                        """).query(UUID.class).list().stream()
                .map(AccountId::new)
                .collect(Collectors.toUnmodifiableSet());
    }

    @Override
    @Transactional
    public void name(Viewer viewer, AccountId account, boolean named) {
        gate.require(viewer, Action.MANAGE_ACCOUNTS);
        if (isNamed(account) == named) {
            return;
        }
        var number = jdbc.sql("select coalesce(max(number), 0) from safeguarding_person where account = :account")
                .param("account", account.value())
                .query(Long.class)
                .single();
        try {
            jdbc.sql("""
                            insert into safeguarding_person (account, number, named, said_by, said_at)
                            values (:account, :number, :named, :by, :at)
                            """)
                    .param("account", account.value())
                    .param("number", number + 1)
                    .param("named", named)
                    .param("by", viewer.tag())
                    .param("at", now())
                    .update();
        } catch (DuplicateKeyException saidByAnotherAtTheSameMoment) {
            throw new Overtaken();
        }
        trail.happened(viewer, (named ? "named for safeguarding: account " : "safeguarding ended: account ") + account);
    }

    @Override
    public boolean isNamed(AccountId account) {
        return jdbc.sql("select named from safeguarding_person where account = :account order by number desc"
                        + " fetch first 1 row only")
                .param("account", account.value())
                .query(Boolean.class)
                .optional()
                .orElse(false);
    }

    private OffsetDateTime now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }
}
