package org.hearthway.pump.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.pump.Pumps.Fill;
import org.hearthway.pump.engine.RefillBy;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps recorded fills. A fill's number is part of its key, so of two recorded at once one wins. */
@Repository
class FillRecords {

    private static final String COLUMNS = "select child_id, fill_number, filled_on, alarm_on, margin_days,"
            + " life_limit_days, note, recorded_by, recorded_at from pump_fill ";

    private final JdbcClient jdbc;

    FillRecords(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All fills of a child, newest first. */
    List<Fill> of(ChildId child) {
        return jdbc.sql(COLUMNS + "where child_id = ? order by fill_number desc")
                .param(child.value())
                .query((rs, row) -> fill(rs))
                .list();
    }

    /** The newest fill of a child. */
    Optional<Fill> newest(ChildId child) {
        return of(child).stream().findFirst();
    }

    /** The newest fill of every child that is there. */
    Map<ChildId, Fill> newest() {
        var all = new HashMap<ChildId, Fill>();
        jdbc.sql(COLUMNS + "where child_id in (select id from child_present) order by child_id, fill_number")
                .query(rs -> {
                    all.put(new ChildId(rs.getObject("child_id", UUID.class)), fill(rs));
                });
        return all;
    }

    /** Adds a fill. @throws Overtaken when its number is taken */
    void add(ChildId child, Fill fill) {
        try {
            jdbc.sql("insert into pump_fill (child_id, fill_number, filled_on, alarm_on, margin_days, life_limit_days,"
                            + " note, recorded_by, recorded_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                    .param(child.value())
                    .param(fill.number())
                    .param(fill.refillBy().filled())
                    .param(fill.refillBy().alarm())
                    .param(fill.refillBy().marginDays())
                    .param(fill.refillBy().lifeLimitDays())
                    .param(fill.note())
                    .param(fill.by().value())
                    .param(fill.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }

    private static Fill fill(ResultSet rs) throws SQLException {
        var refillBy = RefillBy.of(
                rs.getObject("filled_on", LocalDate.class),
                rs.getObject("alarm_on", LocalDate.class),
                rs.getInt("margin_days"),
                rs.getInt("life_limit_days"));
        return new Fill(
                rs.getLong("fill_number"),
                refillBy,
                rs.getString("note"),
                new AccountId(rs.getObject("recorded_by", UUID.class)),
                rs.getObject("recorded_at", OffsetDateTime.class).toInstant());
    }
}
