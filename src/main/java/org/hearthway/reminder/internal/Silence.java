package org.hearthway.reminder.internal;

import org.hearthway.child.Standings;
import org.hearthway.child.events.StandingChanged;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Stops every message of a child whose status asks nothing of the family, in the transaction that says so; those to the
 * team only when nobody watches the child any more. The messages are left as they stand: when the status is taken back they go on exactly as they were.
 */
@Component
class Silence {

    private final JdbcClient db;
    private final Planning planning;
    private final Standings standings;

    Silence(JdbcClient db, Planning planning, Standings standings) {
        this.db = db;
        this.planning = planning;
        this.standings = standings;
    }

    @EventListener
    void on(StandingChanged changed) {
        var child = changed.child();
        var quiet = !changed.asksTheFamily();
        var unwatched = !standings.now(Family.MACHINE, child).status().isWatched();
        var known = db.sql("update outbox_quiet set quiet = ?, unwatched = ?, since = ? where child = ?")
                .params(quiet, unwatched, OutboxRows.utc(changed.at()), child.value())
                .update();
        if (known == 0) {
            db.sql("insert into outbox_quiet (child, quiet, unwatched, since) values (?, ?, ?, ?)")
                    .params(child.value(), quiet, unwatched, OutboxRows.utc(changed.at()))
                    .update();
        }
        if (!quiet) {
            planning.child(child);
        }
    }
}
