package org.hearthway.caseload.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.caseload.Needs.Outcome;
import org.hearthway.caseload.engine.Cause;
import org.hearthway.caseload.engine.Facts;
import org.hearthway.caseload.engine.Gone;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.caseload.engine.Urgency;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The stored items. A change names the version it was made on; a step of the work is kept beside it. */
@Repository
class NeedItems {

    private final JdbcClient jdbc;

    NeedItems(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** An item as it is stored: people by identifier. */
    record Row(
            UUID id,
            ChildId child,
            Cause cause,
            Instant since,
            Optional<AccountId> owner,
            Optional<AccountId> seenBy,
            Optional<Instant> seenAt,
            Optional<LocalDate> asideUntil,
            String asideReason,
            Optional<Instant> leftAt,
            Optional<AccountId> leftBy,
            Optional<Outcome> outcome,
            String leftWords,
            Optional<Gone> gone,
            long version) {

        /** Whether it is a report of one of the two upper urgencies. */
        boolean cannotWait() {
            return cause.rule() == Rule.SIGN
                    && cause.urgency()
                            .filter(urgency -> urgency == Urgency.NOW || urgency == Urgency.URGENT)
                            .isPresent();
        }

        /** Whether it cannot wait and nobody has taken it up or read it. */
        boolean waitsForAnybody() {
            return cannotWait() && leftAt.isEmpty() && owner.isEmpty() && seenBy.isEmpty();
        }
    }

    List<Row> open() {
        return jdbc.sql("select * from need_item where left_at is null order by due_date, since, id")
                .query(NeedItems::row)
                .list();
    }

    List<Row> openOf(ChildId child) {
        return jdbc.sql("select * from need_item where left_at is null and child = :child order by since, id")
                .param("child", child.value())
                .query(NeedItems::row)
                .list();
    }

    /** Children of whom a report waits that cannot. */
    List<ChildId> childrenWaiting() {
        return jdbc
                .sql("select distinct child from need_item where left_at is null and rule = 'SIGN'"
                        + " and urgency in ('NOW', 'URGENT') and owner is null and seen_by is null"
                        + " and child in (select id from child_present)")
                .query(UUID.class)
                .list()
                .stream()
                .map(ChildId::new)
                .toList();
    }

    /** An item that nobody else can work before the caller's transaction ends. */
    Optional<Row> hold(UUID id) {
        return jdbc.sql("select * from need_item where id = :id for update")
                .param("id", id)
                .query(NeedItems::row)
                .optional();
    }

    List<Row> leftSince(Instant since) {
        return jdbc.sql("select * from need_item where left_at >= :since order by left_at desc, id")
                .param("since", stored(since))
                .query(NeedItems::row)
                .list();
    }

    Optional<Row> find(UUID id) {
        return jdbc.sql("select * from need_item where id = :id")
                .param("id", id)
                .query(NeedItems::row)
                .optional();
    }

    /** Keys of a child's items that were closed with an outcome. */
    Set<String> settled(ChildId child) {
        return jdbc.sql("select distinct cause from need_item where left_outcome is not null and child = :child")
                .param("child", child.value())
                .query(String.class)
                .set();
    }

    /** When the team last closed an item of each rule with an outcome. */
    Map<Rule, Instant> lastAnswered(ChildId child) {
        var last = new EnumMap<Rule, Instant>(Rule.class);
        jdbc.sql("select rule, max(left_at) as at from need_item where child = :child"
                        + " and left_outcome is not null group by rule")
                .param("child", child.value())
                .query((row, n) -> last.put(
                        Rule.valueOf(row.getString("rule")),
                        row.getObject("at", OffsetDateTime.class).toInstant()))
                .list();
        return last;
    }

    /** Adds an item; a second open one with the same cause is refused by the database. */
    void add(ChildId child, Cause cause, Optional<AccountId> owner, Optional<Facts.Read> read, Instant since) {
        jdbc.sql("insert into need_item (id, child, rule, cause, open_cause, fact_date, fact_count, fact_subject,"
                        + " urgency, due_date, due_at, since, owner, seen_by, seen_at, aside_reason, left_words, version)"
                        + " values (:id, :child, :rule, :cause, :open, :date, :count, :subject, :urgency, :due, :dueAt,"
                        + " :since, :owner, :seenBy, :seenAt, '', '', 1)")
                .param("id", UUID.randomUUID())
                .param("child", child.value())
                .param("rule", cause.rule().name())
                .param("cause", cause.key())
                .param("open", child + " " + cause.key())
                .param("date", cause.day())
                .param("count", cause.count())
                .param("subject", cause.subject())
                .param("urgency", cause.urgency().map(Enum::name).orElse(null))
                .param("due", cause.dueDay())
                .param("dueAt", cause.dueAt().map(NeedItems::stored).orElse(null))
                .param("since", stored(since))
                .param("owner", owner.map(AccountId::value).orElse(null))
                .param("seenBy", read.map(one -> one.by().value()).orElse(null))
                .param("seenAt", read.map(one -> stored(one.at())).orElse(null))
                .update();
    }

    /** Writes the particulars of a cause that lasts; what people decide on stays, and so does the version. */
    void refresh(Row row, Cause cause) {
        jdbc.sql("update need_item set fact_date = :date, fact_count = :count, fact_subject = :subject,"
                        + " due_date = :due where id = :id and version = :version and left_at is null")
                .param("date", cause.day())
                .param("count", cause.count())
                .param("subject", cause.subject())
                .param("due", cause.dueDay())
                .param("id", row.id())
                .param("version", row.version())
                .update();
    }

    void own(Row row, AccountId owner, long seen) {
        changed(jdbc.sql("update need_item set owner = :owner, aside_until = null, version = version + 1"
                        + " where id = :id and version = :seen and left_at is null")
                .param("owner", owner.value())
                .param("id", row.id())
                .param("seen", seen)
                .update());
    }

    void see(Row row, AccountId by, Instant at, long seen) {
        changed(jdbc.sql("update need_item set seen_by = :by, seen_at = :at, version = version + 1"
                        + " where id = :id and version = :seen and left_at is null")
                .param("by", by.value())
                .param("at", stored(at))
                .param("id", row.id())
                .param("seen", seen)
                .update());
    }

    void aside(Row row, @Nullable LocalDate until, String reason, long seen) {
        changed(jdbc.sql("update need_item set aside_until = :until, aside_reason = :reason, version = version + 1"
                        + " where id = :id and version = :seen and left_at is null")
                .param("until", until)
                .param("reason", reason)
                .param("id", row.id())
                .param("seen", seen)
                .update());
    }

    void close(Row row, AccountId by, Instant at, Outcome outcome, String words, long seen) {
        changed(jdbc.sql(
                        "update need_item set open_cause = null, left_at = :at, left_by = :by, left_outcome = :outcome,"
                                + " left_words = :words, version = version + 1"
                                + " where id = :id and version = :seen and left_at is null")
                .param("at", stored(at))
                .param("by", by.value())
                .param("outcome", outcome.name())
                .param("words", words)
                .param("id", row.id())
                .param("seen", seen)
                .update());
    }

    /** Closes an item whose cause is gone; false when somebody else closed it first. */
    boolean end(Row row, Gone gone, Instant at) {
        return jdbc.sql(
                                "update need_item set open_cause = null, left_at = :at, left_gone = :gone, version = version + 1"
                                        + " where id = :id and left_at is null")
                        .param("at", stored(at))
                        .param("gone", gone.name())
                        .param("id", row.id())
                        .update()
                == 1;
    }

    void step(UUID item, long version, String step, String by, Instant at, @Nullable LocalDate until, String words) {
        jdbc.sql("insert into need_step (item, version, step, by_tag, at, until, words)"
                        + " values (:item, :version, :step, :by, :at, :until, :words)")
                .param("item", item)
                .param("version", version)
                .param("step", step)
                .param("by", by)
                .param("at", stored(at))
                .param("until", until)
                .param("words", words)
                .update();
    }

    private static void changed(int rows) {
        if (rows != 1) {
            throw new Overtaken();
        }
    }

    private static OffsetDateTime stored(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private static Row row(ResultSet row, int number) throws SQLException {
        var cause = new Cause(
                Rule.valueOf(row.getString("rule")),
                row.getString("cause"),
                row.getObject("due_date", LocalDate.class),
                instant(row, "due_at"),
                row.getObject("fact_date", LocalDate.class),
                row.getInt("fact_count"),
                row.getString("fact_subject"),
                Optional.ofNullable(row.getString("urgency")).map(Urgency::valueOf));
        return new Row(
                row.getObject("id", UUID.class),
                new ChildId(row.getObject("child", UUID.class)),
                cause,
                row.getObject("since", OffsetDateTime.class).toInstant(),
                account(row, "owner"),
                account(row, "seen_by"),
                instant(row, "seen_at"),
                Optional.ofNullable(row.getObject("aside_until", LocalDate.class)),
                row.getString("aside_reason"),
                instant(row, "left_at"),
                account(row, "left_by"),
                Optional.ofNullable(row.getString("left_outcome")).map(Outcome::valueOf),
                row.getString("left_words"),
                Optional.ofNullable(row.getString("left_gone")).map(Gone::valueOf),
                row.getLong("version"));
    }

    private static Optional<AccountId> account(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getObject(column, UUID.class)).map(AccountId::new);
    }

    private static Optional<Instant> instant(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getObject(column, OffsetDateTime.class)).map(OffsetDateTime::toInstant);
    }

    /** Everybody a list of items names. */
    static Set<AccountId> people(List<Row> rows) {
        return rows.stream()
                .flatMap(row -> java.util.stream.Stream.of(row.owner(), row.seenBy(), row.leftBy()))
                .flatMap(Optional::stream)
                .collect(Collectors.toSet());
    }
}
