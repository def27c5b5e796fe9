package org.hearthway.audit.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Action;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.events.ClosedDaySaid;
import org.hearthway.content.events.TextDecided;
import org.springframework.context.annotation.Lazy;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

@Service
class Trail implements AuditTrail {

    private static final int LONGEST = 200;

    private final JdbcClient jdbc;
    private final Gate gate;
    private final Clock clock;
    private final TransactionTemplate ownTransaction;

    /** The gate writes its refusals here, hence the lazy reference back. */
    Trail(JdbcClient jdbc, @Lazy Gate gate, Clock clock, PlatformTransactionManager transactions) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.clock = clock;
        this.ownTransaction = new TransactionTemplate(transactions);
        this.ownTransaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
    }

    @Override
    public void looked(Viewer viewer, ChildId child, String place) {
        write(clock.instant(), viewer, Optional.of(child), "looked: " + place);
    }

    @Override
    public void refused(Viewer viewer, Action action, Optional<ChildId> child) {
        ownTransaction.executeWithoutResult(own -> write(clock.instant(), viewer, child, "refused: " + action));
    }

    @Override
    public void happened(Viewer viewer, String what) {
        write(clock.instant(), viewer, Optional.empty(), what);
    }

    /** Every change leaves its line, in the transaction that makes it. */
    @EventListener
    void changed(Change change) {
        write(change.at(), change.by(), Optional.of(change.child()), "changed: " + change.kind());
    }

    /** What families read is the clinic's word, so that each decision on it leaves its line, too. */
    @EventListener
    void decided(TextDecided decided) {
        happened(decided.by(), decided.what());
    }

    /** A day on which the clinic is closed moves the plans of many children. */
    @EventListener
    void closed(ClosedDaySaid said) {
        happened(said.by(), (said.closed() ? "day closed: " : "day opened: ") + said.day());
    }

    private void write(Instant at, Viewer viewer, Optional<ChildId> child, String what) {
        jdbc.sql("insert into audit_line (written_at, actor, child, what) values (:at, :actor, :child, :what)")
                .param("at", at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                .param("actor", viewer.tag())
                .param("child", child.map(ChildId::value).orElse(null))
                .param("what", what.length() > LONGEST ? what.substring(0, LONGEST) : what)
                .update();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Line> newest(Viewer viewer, int limit) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return jdbc.sql("""
                        select number, written_at, actor, child, what from audit_line
                        order by number desc fetch first :limit rows only
                        """)
                .param("limit", limit)
                .query((row, n) -> new Line(
                        row.getLong("number"),
                        row.getObject("written_at", OffsetDateTime.class).toInstant(),
                        row.getString("actor"),
                        Optional.ofNullable(row.getObject("child", UUID.class)).map(ChildId::new),
                        row.getString("what")))
                .list();
    }
}
