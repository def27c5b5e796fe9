package org.hearthway.child.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The merges as they are stored. */
@Repository
class MergeRows {

    private final JdbcClient jdbc;

    MergeRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A stored merge. */
    record Row(UUID id, ChildId stays, ChildId folds, AccountId by, Instant at, String reason, boolean stands) {

        HoldingMover.Pair pair() {
            return new HoldingMover.Pair(stays, folds);
        }
    }

    UUID add(HoldingMover.Pair pair, AccountId by, Instant at, String reason) {
        var id = UUID.randomUUID();
        jdbc.sql("""
                        insert into child_merge (id, stays, folds, merged_by, merged_at, reason, parted_reason)
                        values (:id, :stays, :folds, :by, :at, :reason, '')
                        """)
                .param("id", id)
                .param("stays", pair.stays().value())
                .param("folds", pair.folds().value())
                .param("by", by.value())
                .param("at", utc(at))
                .param("reason", reason)
                .update();
        fold(pair.folds(), Optional.of(pair.stays()));
        return id;
    }

    /** False when somebody took it back before. */
    boolean part(Row row, AccountId by, Instant at, String reason) {
        fold(row.folds(), Optional.empty());
        return jdbc.sql("""
                                update child_merge set parted_by = :by, parted_at = :at, parted_reason = :reason
                                where id = :id and parted_at is null
                                """)
                        .param("by", by.value())
                        .param("at", utc(at))
                        .param("reason", reason)
                        .param("id", row.id())
                        .update()
                == 1;
    }

    private void fold(ChildId folds, Optional<ChildId> into) {
        jdbc.sql("update child set folded_into = :into where id = :id")
                .param("into", into.map(ChildId::value).orElse(null))
                .param("id", folds.value())
                .update();
    }

    /** Nobody else changes either entry before the caller's transaction ends; in a fixed order, so that two may wait. */
    void hold(HoldingMover.Pair pair) {
        jdbc.sql("select id from child where id in (:stays, :folds) order by id for update")
                .param("stays", pair.stays().value())
                .param("folds", pair.folds().value())
                .query(UUID.class)
                .list();
    }

    List<Row> standing() {
        return jdbc.sql("select * from child_merge where parted_at is null order by turn desc")
                .query(MergeRows::row)
                .list();
    }

    Optional<Row> find(UUID id) {
        return jdbc.sql("select * from child_merge where id = :id")
                .param("id", id)
                .query(MergeRows::row)
                .optional();
    }

    private static OffsetDateTime utc(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private static Row row(ResultSet row, int number) throws SQLException {
        return new Row(
                row.getObject("id", UUID.class),
                new ChildId(row.getObject("stays", UUID.class)),
                new ChildId(row.getObject("folds", UUID.class)),
                new AccountId(row.getObject("merged_by", UUID.class)),
                row.getObject("merged_at", OffsetDateTime.class).toInstant(),
                row.getString("reason"),
                row.getObject("parted_at") == null);
    }
}
