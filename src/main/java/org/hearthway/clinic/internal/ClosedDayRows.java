package org.hearthway.clinic.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.clinic.ClosedDays.ClosedDay;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The closed days as they are stored; what was said of a day is never altered. */
@Repository
class ClosedDayRows {

    private static final String NOW = "select * from closed_day one where version ="
            + " (select max(version) from closed_day other where other.closed_on = one.closed_on)";

    private final JdbcClient jdbc;

    ClosedDayRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How much was said of all days. */
    long edition() {
        return jdbc.sql("select count(*) from closed_day").query(Long.class).single();
    }

    OwnDays.Known known() {
        var edition = edition();
        return new OwnDays.Known(
                edition,
                edition == 0
                        ? java.util.Map.of()
                        : closedFrom(LocalDate.EPOCH).stream()
                                .collect(Collectors.toMap(ClosedDay::day, ClosedDay::name)));
    }

    List<ClosedDay> closedFrom(LocalDate first) {
        return jdbc.sql(NOW + " and closed = true and closed_on >= :first order by closed_on")
                .param("first", first)
                .query(ClosedDayRows::day)
                .list();
    }

    /** The version of what was said last of a day; empty when nothing was. */
    Optional<Long> version(LocalDate day) {
        return jdbc.sql("select version from closed_day where closed_on = :day order by version desc"
                        + " fetch first 1 rows only")
                .param("day", day)
                .query(Long.class)
                .optional();
    }

    void say(ClosedDay said, boolean closed) {
        jdbc.sql("insert into closed_day (closed_on, version, closed, name_en, name_es, said_by, said_at)"
                        + " values (:day, :version, :closed, :en, :es, :by, :at)")
                .param("day", said.day())
                .param("version", said.version())
                .param("closed", closed)
                .param("en", said.name().en())
                .param("es", said.name().es())
                .param("by", said.by().value())
                .param("at", said.at().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                .update();
    }

    private static ClosedDay day(ResultSet row, int number) throws SQLException {
        Instant at = row.getObject("said_at", OffsetDateTime.class).toInstant();
        return new ClosedDay(
                row.getObject("closed_on", LocalDate.class),
                new Bilingual(row.getString("name_en"), row.getString("name_es")),
                new AccountId(row.getObject("said_by", UUID.class)),
                at,
                row.getLong("version"));
    }
}
