package org.hearthway.sign.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.content.Provenance;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs.ReportData;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reports in the database. They are added and never altered; reading one adds a row beside it. */
@Repository
class ReportStore {

    /** A report as it is kept; people are still identifiers. */
    record Kept(
            UUID key,
            List<Sign> signs,
            boolean called,
            String note,
            AccountId by,
            Instant at,
            Optional<KeptRead> read,
            boolean teamOnly) {}

    record KeptRead(AccountId by, Instant at) {}

    private final JdbcClient jdbc;

    ReportStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<ChildId> childOf(UUID key) {
        return jdbc.sql("select child from sign_report where id = :id")
                .param("id", key)
                .query(UUID.class)
                .optional()
                .map(ChildId::new);
    }

    void insert(ChildId child, ReportData data, List<Sign> signs, AccountId by, Instant at) {
        jdbc.sql("""
                        insert into sign_report (id, child, called, note, reported_by, reported_at, team_only)
                        values (:id, :child, :called, :note, :by, :at, :teamOnly)
                        """)
                .param("id", data.key())
                .param("child", child.value())
                .param("called", data.called())
                .param("note", data.note())
                .param("by", by.value())
                .param("at", micros(at))
                .param("teamOnly", data.teamOnly())
                .update();
        for (int place = 0; place < signs.size(); place++) {
            var sign = signs.get(place);
            jdbc.sql("""
                            insert into sign_report_sign (report, place, sign, sign_version, topic, urgency, en, es, source)
                            values (:report, :place, :sign, :version, :topic, :urgency, :en, :es, :source)
                            """)
                    .param("report", data.key())
                    .param("place", place)
                    .param("sign", sign.id())
                    .param("version", sign.provenance().version())
                    .param("topic", sign.topic().name())
                    .param("urgency", sign.urgency().name())
                    .param("en", sign.says().en())
                    .param("es", sign.says().es())
                    .param("source", sign.provenance().source())
                    .update();
        }
    }

    boolean isRead(UUID key) {
        return jdbc.sql("select count(*) from sign_report_read where report = :report")
                        .param("report", key)
                        .query(Long.class)
                        .single()
                > 0;
    }

    void insertRead(UUID key, AccountId by, Instant at) {
        jdbc.sql("insert into sign_report_read (report, read_by, read_at) values (:report, :by, :at)")
                .param("report", key)
                .param("by", by.value())
                .param("at", micros(at))
                .update();
    }

    List<Kept> ofChild(ChildId child) {
        var signs = signsOf(child);
        return jdbc.sql("""
                        select r.id, r.called, r.note, r.team_only, r.reported_by, r.reported_at, x.read_by, x.read_at
                        from sign_report r left join sign_report_read x on x.report = r.id
                        where r.child = :child
                        order by r.reported_at desc, r.id
                        """)
                .param("child", child.value())
                .query((row, n) -> kept(row, signs))
                .list();
    }

    private static Kept kept(ResultSet row, Map<UUID, List<Sign>> signs) throws SQLException {
        var key = row.getObject("id", UUID.class);
        @Nullable UUID reader = row.getObject("read_by", UUID.class);
        return new Kept(
                key,
                signs.getOrDefault(key, List.of()),
                row.getBoolean("called"),
                row.getString("note"),
                new AccountId(row.getObject("reported_by", UUID.class)),
                instant(row, "reported_at"),
                reader == null
                        ? Optional.empty()
                        : Optional.of(new KeptRead(new AccountId(reader), instant(row, "read_at"))),
                row.getBoolean("team_only"));
    }

    private Map<UUID, List<Sign>> signsOf(ChildId child) {
        var all = new HashMap<UUID, List<Sign>>();
        jdbc.sql("""
                        select s.report, s.sign, s.sign_version, s.topic, s.urgency, s.en, s.es, s.source
                        from sign_report_sign s join sign_report r on r.id = s.report
                        where r.child = :child
                        order by s.report, s.place
                        """).param("child", child.value()).query(row -> {
            all.computeIfAbsent(row.getObject("report", UUID.class), k -> new ArrayList<>())
                    .add(sign(row));
        });
        return all;
    }

    private static Sign sign(ResultSet row) throws SQLException {
        return new Sign(
                row.getString("sign"),
                Sign.Topic.valueOf(row.getString("topic")),
                Sign.Urgency.valueOf(row.getString("urgency")),
                new Bilingual(row.getString("en"), row.getString("es")),
                new Provenance(
                        row.getString("source"), row.getInt("sign_version"), Optional.empty(), Optional.empty()));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static OffsetDateTime micros(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }
}
