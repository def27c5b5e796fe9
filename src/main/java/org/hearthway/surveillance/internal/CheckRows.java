package org.hearthway.surveillance.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.surveillance.Check;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.engine.Watched;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Keeps what was recorded, corrected and taken back, in the order it was. The number of an entry is part of its key, so
 * of two at once one wins.
 */
@Repository
class CheckRows {

    /** An entry: the check as it then stood; taken back when it never took place. */
    record Entry(Watched watched, long revision, Check check, boolean withdrawn) {}

    private final JdbcClient jdbc;

    CheckRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All entries of a child, oldest first. */
    List<Entry> of(ChildId child) {
        return jdbc.sql("select * from surveillance_check where child = ? order by watched, revision")
                .param(child.value())
                .query((row, n) -> entry(row))
                .list();
    }

    /** All entries, by child, oldest first. */
    Map<ChildId, List<Entry>> all() {
        var all = new HashMap<ChildId, List<Entry>>();
        jdbc.sql("select * from surveillance_check where child in (select id from child_present)"
                        + " order by child, watched, revision")
                .query(row -> {
                    all.computeIfAbsent(new ChildId(row.getObject("child", UUID.class)), child -> new ArrayList<>())
                            .add(entry(row));
                });
        return all;
    }

    /** The checks that stand, newest day first. */
    static List<Check> standing(List<Entry> entries, Watched watched) {
        var last = new HashMap<Long, Entry>();
        entries.stream()
                .filter(entry -> entry.watched() == watched)
                .forEach(entry -> last.put(entry.check().number(), entry));
        return last.values().stream()
                .filter(entry -> !entry.withdrawn())
                .map(Entry::check)
                .sorted(Comparator.comparing((Check check) -> check.data().day())
                        .reversed())
                .toList();
    }

    /** The number of the newest entry, 0 for none. */
    static long newest(List<Entry> entries, Watched watched) {
        return entries.stream()
                .filter(entry -> entry.watched() == watched)
                .mapToLong(Entry::revision)
                .max()
                .orElse(0);
    }

    void add(ChildId child, Entry entry) {
        var data = entry.check().data();
        try {
            jdbc.sql("""
                            insert into surveillance_check (child, watched, revision, check_number, done_on, done_by,
                              migration_left, migration_right, cobb_angle, stable, note, withdrawn, entered_by,
                              entered_at)
                            values (:child, :watched, :revision, :number, :day, :who, :left, :right, :cobb, :stable,
                              :note, :withdrawn, :by, :at)
                            """)
                    .param("child", child.value())
                    .param("watched", entry.watched().name())
                    .param("revision", entry.revision())
                    .param("number", entry.check().number())
                    .param("day", data.day())
                    .param("who", data.who().strip())
                    .param("left", data.left().orElse(null))
                    .param("right", data.right().orElse(null))
                    .param("cobb", data.cobb().orElse(null))
                    .param("stable", data.stable())
                    .param("note", data.note().strip())
                    .param("withdrawn", entry.withdrawn())
                    .param("by", entry.check().by().value())
                    .param("at", entry.check().at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }

    private static Entry entry(ResultSet row) throws SQLException {
        var watched = Watched.valueOf(row.getString("watched"));
        var data = new CheckData(
                watched,
                row.getObject("done_on", LocalDate.class),
                row.getString("done_by"),
                Optional.ofNullable(row.getBigDecimal("migration_left")),
                Optional.ofNullable(row.getBigDecimal("migration_right")),
                Optional.ofNullable(row.getObject("cobb_angle", Integer.class)),
                row.getBoolean("stable"),
                row.getString("note"));
        return new Entry(
                watched,
                row.getLong("revision"),
                new Check(
                        row.getLong("check_number"),
                        data,
                        new AccountId(row.getObject("entered_by", UUID.class)),
                        row.getObject("entered_at", OffsetDateTime.class).toInstant()),
                row.getBoolean("withdrawn"));
    }
}
