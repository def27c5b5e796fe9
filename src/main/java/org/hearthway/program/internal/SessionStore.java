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
import org.hearthway.program.HomeWeek.Became;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The rows of what families said; which of them count is told by {@link Together}. */
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

    /**
     * What is kept beside an entry.
     *
     * @param saidAt when it was said
     * @param received when it came in
     * @param over the last turn of this exercise and day in whose place it stands, whoever said that
     */
    record Margin(Instant saidAt, Instant received, long over, Optional<Integer> version, Optional<Became> became) {}

    void add(ChildId child, Viewer.Person by, Entry entry, Margin margin) {
        insert(child, by, entry, entry.outcome().name(), margin);
    }

    void takeBack(ChildId child, Viewer.Person by, Instant at, String exercise, LocalDate day, long over) {
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
        insert(child, by, nothing, TAKEN_BACK, new Margin(at, at, over, Optional.empty(), Optional.empty()));
    }

    private void insert(ChildId child, Viewer.Person by, Entry entry, String outcome, Margin margin) {
        jdbc.sql("insert into session_entry (entry_key, child, exercise, for_day, outcome, reason, effort, pain,"
                        + " rated_by, note, said_by, said_by_name, said_at, received_at, over_turn, seen_version, became)"
                        + " values (:entryKey, :child, :exercise, :forDay, :outcome, :reason, :effort, :pain, :ratedBy,"
                        + " :note, :saidBy, :saidByName, :at, :received, :over, :version, :became)")
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
                .param("at", ProgramStore.utc(margin.saidAt()))
                .param("received", ProgramStore.utc(margin.received()))
                .param("over", margin.over())
                .param("version", margin.version().orElse(null))
                .param("became", margin.became().map(Enum::name).orElse(null))
                .update();
    }

    /** The last turn of an exercise and day, 0 for none. */
    long last(ChildId child, String exercise, LocalDate day) {
        return jdbc.sql("select coalesce(max(turn), 0) from session_entry where child = :child and exercise = :exercise"
                        + " and for_day = :forDay")
                .param("child", child.value())
                .param("exercise", exercise)
                .param("forDay", day)
                .query(Long.class)
                .single();
    }

    /** Whether something that counts for an exercise on a day was said by this account. */
    boolean isSaidBy(ChildId child, String exercise, LocalDate day, AccountId account) {
        return Together.counting(rows(child, day, day)).stream()
                .anyMatch(row -> row.logged().entry().exercise().equals(exercise)
                        && row.by().equals(account));
    }

    /** What counts, newest first. */
    List<Logged> counting(ChildId child, LocalDate from, LocalDate until) {
        return Together.merged(Together.counting(rows(child, from, until)));
    }

    /** All rows of a span, the first first. */
    private List<Together.Row> rows(ChildId child, LocalDate from, LocalDate until) {
        return jdbc.sql("select turn, entry_key, exercise, for_day, outcome, reason, effort, pain, rated_by, note,"
                        + " said_by, said_by_name, said_at, received_at, over_turn, seen_version, became"
                        + " from session_entry where child = :child and for_day between :first and :last order by turn")
                .param("child", child.value())
                .param("first", from)
                .param("last", until)
                .query((row, n) -> new Together.Row(
                        row.getLong("over_turn"),
                        new AccountId(row.getObject("said_by", UUID.class)),
                        row.getString("outcome").equals(TAKEN_BACK),
                        logged(row)))
                .list();
    }

    private static Logged logged(ResultSet row) throws SQLException {
        var outcome = row.getString("outcome");
        var entry = new Entry(
                row.getObject("entry_key", UUID.class),
                row.getString("exercise"),
                row.getObject("for_day", LocalDate.class),
                outcome.equals(TAKEN_BACK) ? Outcome.DONE : Outcome.valueOf(outcome),
                Optional.ofNullable(row.getString("reason")).map(Reason::valueOf),
                Optional.ofNullable(row.getObject("effort", Integer.class)),
                Optional.ofNullable(row.getObject("pain", Integer.class)),
                Optional.ofNullable(row.getString("rated_by")).map(RatedBy::valueOf),
                row.getString("note"));
        return new Logged(
                entry,
                row.getString("said_by_name"),
                row.getObject("said_at", OffsetDateTime.class).toInstant(),
                row.getObject("received_at", OffsetDateTime.class).toInstant(),
                Optional.ofNullable(row.getObject("seen_version", Integer.class)),
                Optional.ofNullable(row.getString("became")).map(Became::valueOf),
                row.getLong("turn"),
                List.of());
    }
}
