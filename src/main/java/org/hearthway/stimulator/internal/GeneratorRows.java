package org.hearthway.stimulator.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.stimulator.Generator.About;
import org.hearthway.stimulator.engine.Charge;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps of what kind each generator is, in versions. */
@Repository
class GeneratorRows {

    private final JdbcClient jdbc;

    GeneratorRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The newest version of each generator of a child, by serial number. */
    Map<String, About> of(ChildId child) {
        var all = new HashMap<String, About>();
        jdbc.sql("select * from stimulator_generator where child = ? order by serial, version")
                .param(child.value())
                .query(row -> {
                    all.put(row.getString("serial"), about(row));
                });
        return all;
    }

    /** The same of all children that are there. */
    Map<ChildId, Map<String, About>> all() {
        var all = new HashMap<ChildId, Map<String, About>>();
        jdbc.sql("select * from stimulator_generator where child in (select id from child_present)"
                        + " order by child, serial, version")
                .query(row -> {
                    all.computeIfAbsent(new ChildId(row.getObject("child", UUID.class)), child -> new HashMap<>())
                            .put(row.getString("serial"), about(row));
                });
        return all;
    }

    private static About about(ResultSet row) throws SQLException {
        return new About(
                Charge.valueOf(row.getString("charge")),
                Optional.ofNullable(row.getObject("life_years", Integer.class)),
                Optional.ofNullable(row.getBigDecimal("end_volts")),
                row.getLong("version"));
    }

    void add(ChildId child, String serial, About about, AccountId by, Instant at) {
        try {
            jdbc.sql("""
                            insert into stimulator_generator (child, serial, version, charge, life_years, end_volts,
                              entered_by, entered_at) values (:child, :serial, :version, :charge, :life, :end, :by, :at)
                            """)
                    .param("child", child.value())
                    .param("serial", serial)
                    .param("version", about.version())
                    .param("charge", about.charge().name())
                    .param("life", about.lifeYears().orElse(null))
                    .param("end", about.endVolts().orElse(null))
                    .param("by", by.value())
                    .param("at", at.atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }
}
