package org.hearthway.path.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.Period;
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
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.network.Span;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps what was decided for each child's path. A row's version is part of its key, so of two at once one wins. */
@Repository
class DecisionRecords {

    private static final String COLUMNS = """
            select child_id, version, kind, pathway, stage, given_day, last_day, outcome, rule_at, earliest, usual, latest, undoes,
              reason, account_id, decided_at
            from path_change
            """;

    private final JdbcClient jdbc;

    DecisionRecords(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** One row. */
    record Row(
            ChildId child,
            long version,
            Plans.Kind kind,
            Optional<String> pathway,
            Optional<String> stage,
            Optional<LocalDate> day,
            Optional<LocalDate> last,
            Optional<String> outcome,
            Optional<Integer> ruleAt,
            Optional<After> rule,
            Optional<Long> undoes,
            String reason,
            Optional<AccountId> by,
            Instant at) {

        /** Whether a path begins with it. */
        boolean isBeginning() {
            return kind == Plans.Kind.BEGUN || kind == Plans.Kind.BESIDE;
        }

        /** The days on which the family cannot come, where that was decided. */
        Optional<Span> away() {
            return last.flatMap(until -> day.map(from -> new Span(from, until)));
        }
    }

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
            jdbc.sql("""
                    insert into path_change (child_id, version, kind, pathway, stage, given_day, last_day, outcome,
                      rule_at, earliest, usual, latest, undoes, reason, actor, account_id, decided_at)
                    values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                    .param(row.child().value())
                    .param(row.version())
                    .param(row.kind().name())
                    .param(row.pathway().orElse(null))
                    .param(row.stage().orElse(null))
                    .param(row.day().orElse(null))
                    .param(row.last().orElse(null))
                    .param(row.outcome().orElse(null))
                    .param(row.ruleAt().orElse(null))
                    .param(row.rule().map(After::earliest).map(Period::toString).orElse(null))
                    .param(row.rule()
                            .flatMap(After::usual)
                            .map(Period::toString)
                            .orElse(null))
                    .param(row.rule()
                            .flatMap(After::latest)
                            .map(Period::toString)
                            .orElse(null))
                    .param(row.undoes().orElse(null))
                    .param(row.reason())
                    .param(by.tag())
                    .param(row.by().map(AccountId::value).orElse(null))
                    .param(row.at().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }

    /** The gaps alone; what they count from stands in the path. */
    private static Optional<After> rule(ResultSet rs) throws SQLException {
        var earliest = gap(rs, "earliest");
        var usual = gap(rs, "usual");
        var latest = gap(rs, "latest");
        return earliest.map(least -> new After(Optional.empty(), Edge.START, least, usual, latest));
    }

    private static Optional<Period> gap(ResultSet rs, String column) throws SQLException {
        return Optional.ofNullable(rs.getString(column)).map(Period::parse);
    }

    private static Row row(ResultSet rs, int number) throws SQLException {
        return new Row(
                new ChildId(rs.getObject("child_id", UUID.class)),
                rs.getLong("version"),
                Plans.Kind.valueOf(rs.getString("kind")),
                Optional.ofNullable(rs.getString("pathway")),
                Optional.ofNullable(rs.getString("stage")),
                Optional.ofNullable(rs.getObject("given_day", LocalDate.class)),
                Optional.ofNullable(rs.getObject("last_day", LocalDate.class)),
                Optional.ofNullable(rs.getString("outcome")),
                Optional.ofNullable(rs.getObject("rule_at", Integer.class)),
                rule(rs),
                Optional.ofNullable(rs.getObject("undoes", Long.class)),
                rs.getString("reason"),
                Optional.ofNullable(rs.getObject("account_id", UUID.class)).map(AccountId::new),
                rs.getObject("decided_at", OffsetDateTime.class).toInstant());
    }
}
