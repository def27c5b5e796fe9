package org.hearthway.caseload.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.caseload.NeedFigures.Said;
import org.hearthway.caseload.engine.Figure;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was said of the numbers, as it is stored; two who say one at once collide on its version. */
@Repository
class FigureRows {

    private static final String NEWEST = "select * from need_figure one where version ="
            + " (select max(version) from need_figure other where other.figure = one.figure)";

    private final JdbcClient jdbc;

    FigureRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How much was said of all of them. */
    long edition() {
        return jdbc.sql("select count(*) from need_figure").query(Long.class).single();
    }

    /** The last word about each number of which anything was said. */
    List<Said> newest() {
        return jdbc.sql(NEWEST).query(FigureRows::said).list();
    }

    List<Said> all() {
        return jdbc.sql("select * from need_figure order by said_at desc, figure, version desc")
                .query(FigureRows::said)
                .list();
    }

    void add(Said said) {
        jdbc.sql("insert into need_figure (figure, version, before_it, own, reason, said_by, said_at)"
                        + " values (:figure, :version, :before, :own, :reason, :by, :at)")
                .param("figure", said.figure().name())
                .param("version", said.version())
                .param("before", said.before())
                .param("own", said.number().orElse(null))
                .param("reason", said.reason())
                .param("by", said.by().value())
                .param("at", said.at().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                .update();
    }

    private static Said said(ResultSet row, int number) throws SQLException {
        return new Said(
                Figure.valueOf(row.getString("figure")),
                row.getInt("before_it"),
                Optional.ofNullable(row.getObject("own", Integer.class)),
                row.getString("reason"),
                new AccountId(row.getObject("said_by", UUID.class)),
                row.getObject("said_at", OffsetDateTime.class).toInstant(),
                row.getLong("version"));
    }
}
