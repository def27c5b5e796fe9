package org.hearthway.path.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.path.Plans;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps what was decided for each child's path. A row's version is part of its key, so of two at once one wins. */
@Repository
class DecisionRecords {

    private static final String COLUMNS =
            "select child_id, version, kind, pathway, stage, given_day, reason, account_id, decided_at from path_decision ";

    private final JdbcClient jdbc;

    DecisionRecords(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** One row. */
    record Row(
            ChildId child,
            long version,
            Plans.Kind kind,
            String pathway,
            Optional<String> stage,
            Optional<LocalDate> day,
            String reason,
            Optional<AccountId> by,
            Instant at) {}

    /** All of a child's decisions, oldest first. */
    List<Row> of(ChildId child) {
        return jdbc.sql(COLUMNS + "where child_id = ? order by version")
                .param(child.value())
                .query(DecisionRecords::row)
                .list();
    }

    /** The decisions of every child, oldest first. */
    Map<ChildId, List<Row>> all() {
        return jdbc.sql(COLUMNS + "order by child_id, version").query(DecisionRecords::row).list().stream()
                .collect(Collectors.groupingBy(Row::child));
    }

    /** Adds a decision. @throws Overtaken when the version is taken */
    void add(Row row, Viewer by) {
        try {
            jdbc.sql("insert into path_decision (child_id, version, kind, pathway, stage, given_day, reason, actor,"
                            + " account_id, decided_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                    .param(row.child().value())
                    .param(row.version())
                    .param(row.kind().name())
                    .param(row.pathway())
                    .param(row.stage().orElse(null))
                    .param(row.day().orElse(null))
                    .param(row.reason())
                    .param(by.tag())
                    .param(row.by().map(AccountId::value).orElse(null))
                    .param(row.at().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }

    private static Row row(ResultSet rs, int number) throws SQLException {
        return new Row(
                new ChildId(rs.getObject("child_id", UUID.class)),
                rs.getLong("version"),
                Plans.Kind.valueOf(rs.getString("kind")),
                rs.getString("pathway"),
                Optional.ofNullable(rs.getString("stage")),
                Optional.ofNullable(rs.getObject("given_day", LocalDate.class)),
                rs.getString("reason"),
                Optional.ofNullable(rs.getObject("account_id", UUID.class)).map(AccountId::new),
                rs.getObject("decided_at", OffsetDateTime.class).toInstant());
    }
}
