package org.hearthway.program.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.program.FamilyTimes.Away;
import org.hearthway.program.FamilyTimes.Reason;
import org.hearthway.program.FamilyTimes.Version;
import org.hearthway.program.engine.week.Stretch;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The rows of a family's times, its days away, the weeks that were laid out, and the sessions that were moved. */
@Component
class WeekStore {

    private final JdbcClient jdbc;

    WeekStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Keeps a child's program as it is until the caller's transaction ends, so that two weeks are not laid out at once. */
    void hold(ChildId child) {
        jdbc.sql("select version_number from program_version where child = :child order by version_number for update")
                .param("child", child.value())
                .query(Integer.class)
                .list();
    }

    // times

    /** Every version of a family's times, newest first. */
    List<Version> times(ChildId child) {
        return jdbc.sql("select version_number, effective, body, said_by_name, on_behalf, saved_at from family_times"
                        + " where child = :child order by version_number desc")
                .param("child", child.value())
                .query((row, n) -> new Version(
                        row.getInt("version_number"),
                        row.getObject("effective", LocalDate.class),
                        WeekJson.times(row.getString("body")),
                        row.getString("said_by_name"),
                        row.getBoolean("on_behalf"),
                        row.getObject("saved_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    /**
     * Inserts a version.
     *
     * @throws Overtaken when another has the number already
     */
    void insert(ChildId child, Viewer.Person by, Version version) {
        try {
            jdbc.sql(
                            "insert into family_times (child, version_number, effective, body, said_by, said_by_name, on_behalf,"
                                    + " saved_at) values (:child, :number, :effective, :body, :saidBy, :saidByName, :onBehalf, :at)")
                    .param("child", child.value())
                    .param("number", version.number())
                    .param("effective", version.effective())
                    .param("body", WeekJson.times(version.times()))
                    .param("saidBy", by.account().value())
                    .param("saidByName", by.name())
                    .param("onBehalf", version.onBehalf())
                    .param("at", ProgramStore.utc(version.at()))
                    .update();
        } catch (DuplicateKeyException | ConcurrencyFailureException taken) {
            throw new Overtaken();
        }
    }

    // days away

    /** What counts of the days away that end on the day or later, the next first. */
    List<Away> away(ChildId child, LocalDate day) {
        return jdbc.sql(
                        "select a.away_key, a.first_day, a.last_day, a.reason, a.said_by_name, a.on_behalf from family_away a"
                                + " where a.child = :child and a.last_day >= :day and a.last_day >= a.first_day and a.turn ="
                                + " (select max(n.turn) from family_away n where n.away_key = a.away_key)"
                                + " order by a.first_day, a.turn")
                .param("child", child.value())
                .param("day", day)
                .query((row, n) -> new Away(
                        row.getObject("away_key", UUID.class),
                        row.getObject("first_day", LocalDate.class),
                        row.getObject("last_day", LocalDate.class),
                        Reason.valueOf(row.getString("reason")),
                        row.getString("said_by_name"),
                        row.getBoolean("on_behalf")))
                .list();
    }

    /** Whose days away have this key, if any have. */
    Optional<ChildId> childOfAway(UUID key) {
        return jdbc.sql("select child from family_away where away_key = :awayKey order by turn fetch first 1 row only")
                .param("awayKey", key)
                .query(UUID.class)
                .optional()
                .map(ChildId::new);
    }

    void add(ChildId child, Viewer.Person by, Instant at, Away away) {
        jdbc.sql(
                        "insert into family_away (away_key, child, first_day, last_day, reason, said_by, said_by_name, on_behalf,"
                                + " said_at) values (:awayKey, :child, :firstDay, :lastDay, :reason, :saidBy, :saidByName,"
                                + " :onBehalf, :at)")
                .param("awayKey", away.key())
                .param("child", child.value())
                .param("firstDay", away.first())
                .param("lastDay", away.last())
                .param("reason", away.reason().name())
                .param("saidBy", by.account().value())
                .param("saidByName", by.name())
                .param("onBehalf", away.onBehalf())
                .param("at", ProgramStore.utc(at))
                .update();
    }

    // weeks laid out

    /** The weeks that hold for a day of the span or may hold later, those laid out last first; empty end for all later ones. */
    List<Stretch> laid(ChildId child, LocalDate from, Optional<LocalDate> until) {
        return jdbc.sql("select first_day, last_day, body from week_layout where child = :child"
                        + " and (last_day is null or last_day >= :fromDay) and first_day <= :untilDay"
                        + " order by layout_number desc, first_day")
                .param("child", child.value())
                .param("fromDay", from)
                .param("untilDay", until.orElse(LocalDate.of(9999, 12, 31)))
                .query((row, n) -> new Stretch(
                        row.getObject("first_day", LocalDate.class),
                        Optional.ofNullable(row.getObject("last_day", LocalDate.class)),
                        WeekJson.layout(row.getString("body"))))
                .list();
    }

    /**
     * Keeps weeks that were laid out, over all that were laid out before.
     *
     * @param ofMerge whether they were because another entry was folded into the child, and go when that is taken back
     */
    void keep(ChildId child, Instant at, List<Stretch> stretches, boolean ofMerge) {
        var number = jdbc.sql("select coalesce(max(layout_number), 0) + 1 from week_layout where child = :child")
                .param("child", child.value())
                .query(Integer.class)
                .single();
        for (var stretch : stretches) {
            jdbc.sql("insert into week_layout (child, layout_number, first_day, last_day, body, of_merge, saved_at)"
                            + " values (:child, :number, :firstDay, :lastDay, :body, :ofMerge, :at)")
                    .param("ofMerge", ofMerge)
                    .param("child", child.value())
                    .param("number", number)
                    .param("firstDay", stretch.from())
                    .param("lastDay", stretch.until().orElse(null))
                    .param("body", WeekJson.layout(stretch.layout()))
                    .param("at", ProgramStore.utc(at))
                    .update();
        }
    }

    /** Lets go of what was laid out because another entry was folded into the child. */
    void dropOfMerge(ChildId child) {
        jdbc.sql("delete from week_layout where child = :child and of_merge")
                .param("child", child.value())
                .update();
    }

    // sessions moved

    /**
     * A session that was moved.
     *
     * @param line name of the line
     * @param start its time before, midnight when it had none
     * @param toStart its time now, midnight when it has none
     */
    record Move(UUID key, String line, LocalDate from, LocalTime start, LocalDate to, LocalTime toStart) {}

    /** What counts of the sessions moved from or to a day of the span, in the order in which they were moved. */
    List<Move> moves(ChildId child, LocalDate from, LocalDate until) {
        return jdbc.sql("select m.move_key, m.exercise, m.from_day, m.from_start, m.to_day, m.to_start from week_move m"
                        + " where m.child = :child and m.taken_back = false and m.turn ="
                        + " (select max(n.turn) from week_move n where n.move_key = m.move_key)"
                        + " and (m.from_day between :first and :last or m.to_day between :first and :last)"
                        + " order by m.turn")
                .param("child", child.value())
                .param("first", from)
                .param("last", until)
                .query((row, n) -> move(row))
                .list();
    }

    /** The move with that key, whatever became of it. */
    Optional<Move> move(ChildId child, UUID key) {
        return jdbc.sql("select move_key, exercise, from_day, from_start, to_day, to_start from week_move"
                        + " where child = :child and move_key = :moveKey order by turn fetch first 1 row only")
                .param("child", child.value())
                .param("moveKey", key)
                .query((row, n) -> move(row))
                .optional();
    }

    private static Move move(ResultSet row) throws SQLException {
        return new Move(
                row.getObject("move_key", UUID.class),
                row.getString("exercise"),
                row.getObject("from_day", LocalDate.class),
                row.getObject("from_start", LocalTime.class),
                row.getObject("to_day", LocalDate.class),
                row.getObject("to_start", LocalTime.class));
    }

    void add(ChildId child, Viewer.Person by, Instant at, Move move, boolean takenBack) {
        jdbc.sql("insert into week_move (move_key, child, exercise, from_day, from_start, to_day, to_start, taken_back,"
                        + " said_by, said_by_name, said_at) values (:moveKey, :child, :exercise, :fromDay, :fromStart, :toDay,"
                        + " :toStart, :takenBack, :saidBy, :saidByName, :at)")
                .param("moveKey", move.key())
                .param("child", child.value())
                .param("exercise", move.line())
                .param("fromDay", move.from())
                .param("fromStart", move.start())
                .param("toDay", move.to())
                .param("toStart", move.toStart())
                .param("takenBack", takenBack)
                .param("saidBy", by.account().value())
                .param("saidByName", by.name())
                .param("at", ProgramStore.utc(at))
                .update();
    }
}
