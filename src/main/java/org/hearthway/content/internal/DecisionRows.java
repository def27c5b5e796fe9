package org.hearthway.content.internal;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hearthway.content.SignOff.Decided;
import org.hearthway.content.SignOff.Decision;
import org.hearthway.content.SignOff.Item;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The stored decisions on family texts. */
@Component
class DecisionRows {

    private final JdbcClient jdbc;

    DecisionRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All of them, the oldest of each item first. */
    List<Decision> all() {
        return jdbc.sql("""
                        select kind, item, version, number, decided, reason, decided_by, decided_at from content_decision
                        order by kind, item, version, number
                        """)
                .query((row, n) -> new Decision(
                        new Item(row.getString("kind"), row.getString("item"), row.getInt("version")),
                        row.getInt("number"),
                        Decided.valueOf(row.getString("decided")),
                        row.getString("reason"),
                        row.getString("decided_by"),
                        row.getObject("decided_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    /** The newest of each item. */
    Map<Item, Decision> newest() {
        var newest = new HashMap<Item, Decision>();
        all().forEach(decision -> newest.put(decision.item(), decision));
        return newest;
    }

    /** Adds one. @throws DuplicateKeyException when that number is taken */
    void add(Decision decision) {
        jdbc.sql("""
                        insert into content_decision
                          (kind, item, version, number, decided, reason, decided_by, decided_at)
                        values (:kind, :item, :version, :number, :decided, :reason, :by, :at)
                        """)
                .param("kind", decision.item().kind())
                .param("item", decision.item().id())
                .param("version", decision.item().version())
                .param("number", decision.number())
                .param("decided", decision.decided().name())
                .param("reason", decision.reason())
                .param("by", decision.by())
                .param("at", utc(decision.at()))
                .update();
    }

    static OffsetDateTime utc(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }
}
