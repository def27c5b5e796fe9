package org.hearthway.reminder.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.reminder.Outbox.State;
import org.hearthway.visit.VisitId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The messages in the database, as planning and the Desk see them. */
@Repository
class OutboxRows {

    /**
     * Not of a child whose family is left in peace, nor to the team of one whom nobody watches, see {@link Silence};
     * nor of an entry that was folded into another.
     */
    static final String MAY_LEAVE = "child in (select p.id from child_present p)"
            + " and child not in (select q.child from outbox_quiet q where q.unwatched or (q.quiet and not to_team))";

    private final JdbcClient db;

    OutboxRows(JdbcClient db) {
        this.db = db;
    }

    void insert(Draft draft, Optional<UUID> link, Instant now) {
        insert(draft, link, false, now);
    }

    void insertToTeam(Draft draft, Instant now) {
        insert(draft, Optional.empty(), true, now);
    }

    private void insert(Draft draft, Optional<UUID> link, boolean toTeam, Instant now) {
        db.sql("""
                insert into outbox_message (id, idem, cause, child, person, visit, channel, language, zone, about, text_id,
                  occasion_local, occasion_zone, urgent, subject, body, link, due, useful_until, state, tries, reason,
                  note, by_hand, doubtful, unwanted, to_team, created_at, version)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'PLANNED', 0, '', '', false, false, false,
                  ?, ?, 1)
                """)
                .params(
                        UUID.randomUUID(),
                        draft.idem(),
                        draft.cause(),
                        draft.child().value(),
                        draft.person().value(),
                        draft.visit().map(VisitId::value).orElse(null),
                        draft.channel().name(),
                        draft.language().tag(),
                        draft.zone().getId(),
                        draft.about(),
                        draft.textId(),
                        draft.occasion(),
                        draft.occasionZone().getId(),
                        draft.urgent(),
                        draft.subject(),
                        draft.body(),
                        link.orElse(null),
                        utc(draft.due()),
                        draft.usefulUntil().map(OutboxRows::utc).orElse(null),
                        toTeam,
                        utc(now))
                .update();
    }

    /** Its cause fell away: what still waits is cancelled; what is just being sent is not tried again. */
    void retire(UUID id) {
        var waiting = db.sql("""
                        update outbox_message set state = 'CANCELLED', version = version + 1
                        where id = ? and state in ('PLANNED', 'HELD', 'RETRYING', 'TO_CALL', 'NOT_REACHED')
                        """).param(id).update();
        if (waiting == 0) {
            db.sql(
                            "update outbox_message set unwanted = true, version = version + 1 where id = ? and state = 'SENDING'")
                    .param(id)
                    .update();
        }
    }

    /** Its cause came back, for instance a confirmed visit that the family then asked to move. */
    void revive(UUID id, Draft draft) {
        db.sql("""
                update outbox_message set state = 'PLANNED', due = ?, worker = null, lease_until = null,
                  version = version + 1
                where id = ? and state = 'CANCELLED'
                """).params(utc(draft.due()), id).update();
        reword(id, draft);
    }

    /** The words changed before it left: another standing, another language, another text. */
    void reword(UUID id, Draft draft) {
        db.sql("""
                update outbox_message set text_id = ?, subject = ?, body = ?, language = ?, version = version + 1
                where id = ? and state in ('PLANNED', 'HELD', 'RETRYING', 'TO_CALL')
                  and (text_id <> ? or subject <> ? or body <> ? or language <> ?)
                """)
                .params(
                        draft.textId(),
                        draft.subject(),
                        draft.body(),
                        draft.language().tag(),
                        id,
                        draft.textId(),
                        draft.subject(),
                        draft.body(),
                        draft.language().tag())
                .update();
    }

    /**
     * Changes where a message stands, if it is still the version that was seen.
     *
     * @return whether it was
     */
    boolean change(OutboxRow seen, State state, Instant due, boolean byHand, String note, @Nullable Instant settled) {
        return db.sql("""
                                update outbox_message set state = ?, due = ?, by_hand = ?, note = ?, settled_at = ?,
                                  worker = null, lease_until = null, version = version + 1
                                where id = ? and version = ?
                                """)
                        .params(
                                state.name(),
                                utc(due),
                                byHand,
                                note,
                                settled == null ? null : utc(settled),
                                seen.id(),
                                seen.version())
                        .update()
                == 1;
    }

    List<OutboxRow> ofCause(String cause) {
        return db.sql("select * from outbox_message where cause = ?")
                .param(cause)
                .query(OutboxRows::row)
                .list();
    }

    List<OutboxRow> ofChild(ChildId child) {
        return db.sql("select * from outbox_message where child = ? and not to_team order by due desc")
                .param(child.value())
                .query(OutboxRows::row)
                .list();
    }

    /** All that are not cancelled and due, or settled, after the instant; of children left in peace only the settled. */
    List<OutboxRow> after(Instant instant) {
        return db.sql("""
                        select * from outbox_message where state <> 'CANCELLED' and not to_team and (due >= ? or settled_at >= ?
                          or state in ('RETRYING', 'TO_CALL', 'HELD')) and (settled_at is not null or %s)
                        order by due
                        """.formatted(MAY_LEAVE))
                .params(utc(instant), utc(instant))
                .query(OutboxRows::row)
                .list();
    }

    Optional<OutboxRow> find(UUID id) {
        return db.sql("select * from outbox_message where id = ?")
                .param(id)
                .query(OutboxRows::row)
                .optional();
    }

    /** The link that this person already has for this visit. */
    Optional<UUID> linkOf(VisitId visit, AccountId person) {
        return db.sql("select link from outbox_message where visit = ? and person = ? and link is not null limit 1")
                .params(visit.value(), person.value())
                .query(UUID.class)
                .optional();
    }

    /** All links that were made for a visit. */
    List<UUID> linksOf(VisitId visit) {
        return db.sql("select distinct link from outbox_message where visit = ? and link is not null")
                .param(visit.value())
                .query(UUID.class)
                .list();
    }

    /** How the person whom a link was made for reads: the language, and whose clock. */
    record Reader(Language language, ZoneId zone, Optional<AccountId> person) {}

    /** Whom a link was made for. */
    Optional<Reader> readerOf(UUID link) {
        return db.sql(
                        "select language, zone, person from outbox_message where link = ? order by created_at desc limit 1")
                .param(link)
                .query((row, number) -> new Reader(
                        language(row.getString("language")),
                        ZoneId.of(row.getString("zone")),
                        Optional.of(new AccountId(row.getObject("person", UUID.class)))))
                .optional();
    }

    static OffsetDateTime utc(Instant instant) {
        return instant.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private static Language language(String tag) {
        return Language.of(java.util.Locale.forLanguageTag(tag));
    }

    static OutboxRow row(ResultSet row, int number) throws SQLException {
        var useful = row.getObject("useful_until", OffsetDateTime.class);
        var draft = new Draft(
                row.getString("idem"),
                row.getString("cause"),
                new ChildId(row.getObject("child", UUID.class)),
                new AccountId(row.getObject("person", UUID.class)),
                Optional.ofNullable(row.getObject("visit", UUID.class)).map(VisitId::new),
                Channel.valueOf(row.getString("channel")),
                language(row.getString("language")),
                ZoneId.of(row.getString("zone")),
                row.getString("about"),
                row.getString("text_id"),
                row.getObject("occasion_local", LocalDateTime.class),
                ZoneId.of(row.getString("occasion_zone")),
                row.getBoolean("urgent"),
                row.getString("subject"),
                row.getString("body"),
                row.getObject("due", OffsetDateTime.class).toInstant(),
                Optional.ofNullable(useful).map(OffsetDateTime::toInstant));
        return new OutboxRow(
                row.getObject("id", UUID.class),
                draft,
                Optional.ofNullable(row.getObject("link", UUID.class)),
                State.valueOf(row.getString("state")),
                row.getInt("tries"),
                row.getString("reason"),
                row.getString("note"),
                row.getBoolean("by_hand"),
                row.getBoolean("doubtful"),
                row.getBoolean("unwanted"),
                row.getBoolean("to_team"),
                row.getLong("version"));
    }
}
