package org.hearthway.reminder.internal;

import org.hearthway.child.events.StandingChanged;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Stops every message of a child whose status asks nothing of the family, in the transaction that says so. The messages
 * are left as they stand: when the status is taken back they go on exactly as they were.
 */
@Component
class Silence {

    private final JdbcClient db;
    private final Planning planning;

    Silence(JdbcClient db, Planning planning) {
        this.db = db;
        this.planning = planning;
    }

    @EventListener
    void on(StandingChanged changed) {
        var child = changed.child();
        var quiet = !changed.asksTheFamily();
        var known = db.sql("update outbox_quiet set quiet = ?, since = ? where child = ?")
                .params(quiet, OutboxRows.utc(changed.at()), child.value())
                .update();
        if (known == 0) {
            db.sql("insert into outbox_quiet (child, quiet, since) values (?, ?, ?)")
                    .params(child.value(), quiet, OutboxRows.utc(changed.at()))
                    .update();
        }
        if (!quiet) {
            planning.child(child);
        }
    }
}
