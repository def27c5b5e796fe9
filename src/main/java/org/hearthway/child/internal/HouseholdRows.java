package org.hearthway.child.internal;

import java.time.Clock;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households;
import org.hearthway.child.events.CaregiverLinked;
import org.hearthway.child.events.CaregiverUnlinked;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class HouseholdRows implements Households {

    private static final String ENDED = "NONE";

    private final JdbcClient jdbc;
    private final Gate gate;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    /** The gate itself asks this module how far a caregiver reaches, hence the lazy reference. */
    HouseholdRows(JdbcClient jdbc, @Lazy Gate gate, ApplicationEventPublisher events, Clock clock) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.events = events;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Caregiver> caregivers(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return jdbc.sql("""
                        select r.account, r.reach from caregiver_reach r
                        where r.child = :child and r.reach <> 'NONE'
                          and r.number = (select max(n.number) from caregiver_reach n
                                          where n.child = r.child and n.account = r.account)
                        order by r.said_at, r.account
                        """)
                .param("child", child.value())
                .query((row, n) -> new Caregiver(
                        new AccountId(row.getObject("account", UUID.class)), Reach.valueOf(row.getString("reach"))))
                .list();
    }

    @Override
    public Optional<Reach> reach(AccountId account, ChildId child) {
        return latest(account, child)
                .map(Latest::reach)
                .filter(r -> !r.equals(ENDED) && exists(child))
                .map(Reach::valueOf);
    }

    @Override
    public void hold(AccountId account, ChildId child) {
        Held.rows(jdbc, "caregiver_reach", account, child);
    }

    @Override
    public boolean exists(ChildId child) {
        return jdbc.sql("select count(*) from child_present where id = :id")
                        .param("id", child.value())
                        .query(Long.class)
                        .single()
                > 0;
    }

    @Override
    @Transactional
    public void link(Viewer viewer, ChildId child, AccountId account, Reach reach) {
        gate.require(viewer, Action.LINK_CAREGIVER, child);
        if (say(viewer, child, account, reach.name())) {
            events.publishEvent(new CaregiverLinked(child, viewer, clock.instant(), account));
        }
    }

    @Override
    @Transactional
    public void unlink(Viewer viewer, ChildId child, AccountId account) {
        gate.require(viewer, Action.LINK_CAREGIVER, child);
        if (say(viewer, child, account, ENDED)) {
            events.publishEvent(new CaregiverUnlinked(child, viewer, clock.instant(), account));
        }
    }

    private record Latest(long number, String reach) {}

    private Optional<Latest> latest(AccountId account, ChildId child) {
        return jdbc.sql("""
                        select number, reach from caregiver_reach
                        where account = :account and child = :child
                        order by number desc fetch first 1 row only
                        """)
                .param("account", account.value())
                .param("child", child.value())
                .query((row, n) -> new Latest(row.getLong("number"), row.getString("reach")))
                .optional();
    }

    /** Returns whether anything is new. */
    private boolean say(Viewer viewer, ChildId child, AccountId account, String reach) {
        hold(account, child);
        var latest = latest(account, child);
        if (latest.map(Latest::reach).orElse(ENDED).equals(reach)) {
            return false;
        }
        try {
            jdbc.sql("""
                            insert into caregiver_reach (child, account, number, reach, said_by, said_at)
                            values (:child, :account, :number, :reach, :by, :at)
                            """)
                    .param("child", child.value())
                    .param("account", account.value())
                    .param("number", latest.map(Latest::number).orElse(0L) + 1)
                    .param("reach", reach)
                    .param("by", viewer.tag())
                    .param("at", clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException saidByAnotherAtTheSameMoment) {
            throw new Overtaken();
        }
        return true;
    }
}
