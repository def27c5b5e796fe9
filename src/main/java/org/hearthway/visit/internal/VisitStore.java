package org.hearthway.visit.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Visits in the database. A change adds a version; of two changes to one version the second finds its place taken. */
@Repository
class VisitStore {

    private static final String LATEST = """
            select v.id, v.child, v.kind, v.purpose, x.version, x.starts_local, x.zone, x.minutes, x.place,
                   x.answer, x.wish, x.state, x.moves
            from visit v join visit_version x on x.visit = v.id
            where not exists (select 1 from visit_version n where n.visit = x.visit and n.version = x.version + 1)
            """;

    private final JdbcClient db;
    private final VisitKinds kinds;

    VisitStore(JdbcClient db, VisitKinds kinds) {
        this.db = db;
        this.kinds = kinds;
    }

    void insert(Visit visit, Viewer by, Instant at) {
        db.sql("insert into visit (id, child, kind, purpose, booked_at) values (?, ?, ?, ?, ?)")
                .params(
                        visit.id().value(),
                        visit.child().value(),
                        visit.kind().id(),
                        visit.purpose().orElse(null),
                        at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                .update();
        insertVersion(visit, by, at);
    }

    /**
     * Adds a version.
     *
     * @throws Overtaken when that version exists already
     */
    void insertVersion(Visit visit, Viewer by, Instant at) {
        try {
            db.sql("""
                    insert into visit_version (visit, version, starts_local, zone, minutes, place, answer, wish, state,
                      moves, changed_by, changed_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                    """)
                    .params(
                            visit.id().value(),
                            visit.version(),
                            visit.start(),
                            visit.zone().getId(),
                            visit.minutes(),
                            visit.place(),
                            visit.answer().name(),
                            visit.wish(),
                            visit.state().name(),
                            visit.sequence(),
                            by.tag(),
                            at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            // the exception's text carries values; it ends here
            throw new Overtaken();
        }
    }

    Optional<Visit> find(VisitId id) {
        return db.sql(LATEST + " and v.id = ?")
                .param(id.value())
                .query(this::visit)
                .optional();
    }

    /** Who made the newest version, as the trail names them. */
    String lastChangedBy(VisitId id) {
        return db.sql("select changed_by from visit_version where visit = ? order by version desc limit 1")
                .param(id.value())
                .query(String.class)
                .single();
    }

    /** The start that its newest version up to a moment gave, if it was booked then. */
    Optional<LocalDateTime> startAsOf(VisitId id, Instant moment) {
        return db.sql("""
                        select x.starts_local from visit_version x
                        where x.visit = :id and x.state = 'BOOKED' and x.version =
                          (select max(n.version) from visit_version n where n.visit = :id and n.changed_at <= :moment)
                        """)
                .param("id", id.value())
                .param("moment", moment.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                .query(LocalDateTime.class)
                .optional();
    }

    List<Visit> ofChild(ChildId child) {
        return db.sql(LATEST + " and v.child = ? order by x.starts_local")
                .param(child.value())
                .query(this::visit)
                .list();
    }

    /** Booked ones whose start lies in the span, the end left out. */
    List<Visit> bookedBetween(LocalDateTime from, LocalDateTime until) {
        return db.sql(LATEST
                        + " and x.state = 'BOOKED' and x.starts_local >= ? and x.starts_local < ?"
                        + " order by x.starts_local")
                .params(from, until)
                .query(this::visit)
                .list();
    }

    private Visit visit(ResultSet row, int number) throws SQLException {
        var minutes = row.getInt("minutes");
        return new Visit(
                new VisitId(row.getObject("id", UUID.class)),
                new ChildId(row.getObject("child", UUID.class)),
                kinds.ofBooked(row.getString("kind"), minutes),
                row.getObject("starts_local", LocalDateTime.class),
                ZoneId.of(row.getString("zone")),
                minutes,
                row.getString("place"),
                Optional.ofNullable(row.getString("purpose")),
                Visit.Answer.valueOf(row.getString("answer")),
                row.getString("wish"),
                Visit.State.valueOf(row.getString("state")),
                row.getInt("moves"),
                row.getLong("version"));
    }
}
