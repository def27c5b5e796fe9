package org.hearthway.reminder.internal;

import static org.hearthway.reminder.internal.OutboxRows.utc;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hearthway.reminder.Outbox.State;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The messages as the delivery loop sees them. A worker claims with a lease, and asks for the lease again in the very
 * statement that begins to send: a worker that froze and woke after its lease finds that it may no longer.
 */
@Repository
class DeliveryQueue {

    private static final String TAKE_BACK = """
            update outbox_message set state = case when unwanted then 'CANCELLED' else 'RETRYING' end, doubtful = true,
              worker = null, lease_until = null, version = version + 1
            where state = 'SENDING'""";

    private final JdbcClient db;

    DeliveryQueue(JdbcClient db) {
        this.db = db;
    }

    /** Calls whose time has come become calls to make. */
    int callsDue(Instant now) {
        return db.sql("""
                        update outbox_message set state = 'TO_CALL', version = version + 1
                        where channel = 'CALL' and state = 'PLANNED' and due <= ? and %s
                        """.formatted(OutboxRows.MAY_LEAVE)).param(utc(now)).update();
    }

    /** Claims due mails for this worker, the oldest first. */
    List<OutboxRow> claim(String worker, Instant now, Instant leaseUntil, int atMost) {
        var due = db.sql("""
                        select id, version from outbox_message
                        where channel = 'MAIL' and state in ('PLANNED', 'RETRYING') and due <= ?
                          and (lease_until is null or lease_until < ?) and %s
                        order by due, id fetch first %d rows only
                        """.formatted(OutboxRows.MAY_LEAVE, atMost))
                .params(utc(now), utc(now))
                .query((row, number) -> new Due(row.getObject("id", UUID.class), row.getLong("version")))
                .list();
        return due.stream()
                .filter(one -> db.sql("""
                                        update outbox_message set worker = ?, lease_until = ?, version = version + 1
                                        where id = ? and version = ?
                                        """)
                                .params(worker, utc(leaseUntil), one.id(), one.version())
                                .update()
                        == 1)
                .flatMap(one -> db
                        .sql("select * from outbox_message where id = ?")
                        .param(one.id())
                        .query(OutboxRows::row)
                        .list()
                        .stream())
                .toList();
    }

    private record Due(UUID id, long version) {}

    /**
     * The last step before the mail server: from here on the message may have gone.
     *
     * @return whether this worker still holds the lease and the message is still wanted
     */
    boolean begin(UUID id, String worker, Instant now) {
        return db.sql("""
                                update outbox_message set state = 'SENDING', tries = tries + 1, version = version + 1
                                where id = ? and worker = ? and lease_until > ? and state in ('PLANNED', 'RETRYING')
                                """).params(id, worker, utc(now)).update() == 1;
    }

    /** Ends the work on a message that this worker holds: it has a final state. */
    boolean settle(UUID id, String worker, State state, String reason, Instant now) {
        return db.sql("""
                                update outbox_message set state = ?, reason = ?, settled_at = ?, worker = null,
                                  lease_until = null, version = version + 1
                                where id = ? and worker = ? and state in ('PLANNED', 'RETRYING', 'SENDING')
                                """).params(state.name(), reason, utc(now), id, worker).update() == 1;
    }

    /** Puts a message back for later; one that was being sent when its cause fell away is cancelled instead. */
    void later(UUID id, String worker, Instant due, State state, String reason, boolean doubtful) {
        db.sql("""
                update outbox_message set state = case when unwanted then 'CANCELLED' else ? end, due = ?, reason = ?,
                  doubtful = ?, worker = null, lease_until = null, version = version + 1
                where id = ? and worker = ? and state in ('PLANNED', 'RETRYING', 'SENDING')
                """).params(state.name(), utc(due), reason, doubtful, id, worker).update();
    }

    /** Takes back what was being sent by a worker whose lease has run out. It may have gone: it is sent again as doubtful. */
    int takeBack(Instant now) {
        return db.sql(TAKE_BACK + " and lease_until < ?").param(utc(now)).update();
    }

    /** Takes back everything that an earlier process left, for a program that has its database to itself. */
    int takeBackAll() {
        db.sql("""
                update outbox_message set worker = null, lease_until = null, version = version + 1
                where worker is not null and state in ('PLANNED', 'RETRYING')
                """).update();
        return db.sql(TAKE_BACK).update();
    }
}
