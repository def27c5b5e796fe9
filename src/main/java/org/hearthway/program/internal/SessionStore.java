package org.hearthway.program.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The rows of what families said. The newest row for an exercise and day counts; one that takes back counts as none. */
@Component
class SessionStore {

    private static final String TAKEN_BACK = "TAKEN_BACK";

    private final JdbcClient jdbc;

    SessionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The child that an entry with this key is about, if there is one. */
    Optional<ChildId> childOf(UUID key) {
        return jdbc.sql("select child from session_entry where entry_key = :entryKey")
                .param("entryKey", key)
                .query(UUID.class)
                .optional()
                .map(ChildId::new);
    }

    void add(ChildId child, Viewer.Person by, Instant at, Entry entry) {
        insert(child, by, at, entry, entry.outcome().name());
    }

    void takeBack(ChildId child, Viewer.Person by, Instant at, String exercise, LocalDate day) {
        var nothing = new Entry(
                UUID.randomUUID(),
                exercise,
                day,
                Outcome.DONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        insert(child, by, at, nothing, TAKEN_BACK);
    }

    private void insert(ChildId child, Viewer.Person by, Instant at, Entry entry, String outcome) {
        jdbc.sql("insert into session_entry (entry_key, child, exercise, for_day, outcome, reason, effort, pain,"
                        + " rated_by, note, said_by, said_by_name, said_at) values (:entryKey, :child, :exercise, :forDay,"
                        + " :outcome, :reason, :effort, :pain, :ratedBy, :note, :saidBy, :saidByName, :at)")
                .param("entryKey", entry.key())
                .param("child", child.value())
                .param("exercise", entry.exercise())
                .param("forDay", entry.day())
                .param("outcome", outcome)
                .param("reason", entry.reason().map(Enum::name).orElse(null))
                .param("effort", entry.effort().orElse(null))
                .param("pain", entry.pain().orElse(null))
                .param("ratedBy", entry.ratedBy().map(Enum::name).orElse(null))
                // one of the two databases keeps no zero character
                .param("note", entry.note().replace("\u0000", "").strip())
                .param("saidBy", by.account().value())
                .param("saidByName", by.name())
                .param("at", ProgramStore.utc(at))
                .update();
    }

    /** Whether what counts for an exercise on a day was said by this account. */
    boolean isSaidBy(ChildId child, String exercise, LocalDate day, AccountId account) {
        return jdbc.sql("select said_by from session_entry where child = :child and exercise = :exercise"
                        + " and for_day = :forDay order by turn desc fetch first 1 row only")
                .param("child", child.value())
                .param("exercise", exercise)
                .param("forDay", day)
                .query(UUID.class)
                .optional()
                .filter(account.value()::equals)
                .isPresent();
    }

    /** What counts, newest first. */
    List<Logged> counting(ChildId child, LocalDate from, LocalDate until) {
        return jdbc.sql("select e.entry_key, e.exercise, e.for_day, e.outcome, e.reason, e.effort, e.pain, e.rated_by,"
                        + " e.note, e.said_by_name, e.said_at from session_entry e"
                        + " join (select max(turn) as turn from session_entry where child = :child"
                        + " and for_day between :first and :last group by exercise, for_day) newest on newest.turn = e.turn"
                        + " where e.outcome <> :takenBack order by e.turn desc")
                .param("child", child.value())
                .param("first", from)
                .param("last", until)
                .param("takenBack", TAKEN_BACK)
                .query((row, n) -> logged(row))
                .list();
    }

    private static Logged logged(ResultSet row) throws SQLException {
        var entry = new Entry(
                row.getObject("entry_key", UUID.class),
                row.getString("exercise"),
                row.getObject("for_day", LocalDate.class),
                Outcome.valueOf(row.getString("outcome")),
                Optional.ofNullable(row.getString("reason")).map(Reason::valueOf),
                Optional.ofNullable(row.getObject("effort", Integer.class)),
                Optional.ofNullable(row.getObject("pain", Integer.class)),
                Optional.ofNullable(row.getString("rated_by")).map(RatedBy::valueOf),
                row.getString("note"));
        return new Logged(
                entry,
                row.getString("said_by_name"),
                row.getObject("said_at", OffsetDateTime.class).toInstant());
    }
}
