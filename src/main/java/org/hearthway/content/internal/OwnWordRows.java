package org.hearthway.content.internal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.content.SignOff.Item;
import org.hearthway.content.SignOff.OwnWords;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * The stored words of the clinic, and those that count now at hand: they are asked for with every exercise and every
 * sign. A change counts at once where it was made and elsewhere within {@link #AT_HAND}.
 */
@Component
class OwnWordRows {

    /** How long what was read is used without looking again, for clinics that run more than one program. */
    private static final Duration AT_HAND = Duration.ofSeconds(10);

    private record Loaded(Instant at, Map<Item, Map<Integer, Bilingual>> words) {}

    private final JdbcClient jdbc;
    private final Clock clock;
    private volatile @Nullable Loaded loaded;

    OwnWordRows(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** All ever written, the oldest of each piece first. */
    List<OwnWords> all() {
        return jdbc.sql("""
                        select kind, item, version, place, number, en, es, written_by, written_at from content_own_words
                        order by kind, item, version, place, number
                        """)
                .query((row, n) -> new OwnWords(
                        new Item(row.getString("kind"), row.getString("item"), row.getInt("version")),
                        row.getInt("place"),
                        row.getInt("number"),
                        words(row.getString("en"), row.getString("es")),
                        row.getString("written_by"),
                        row.getObject("written_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    private static Optional<Bilingual> words(@Nullable String en, @Nullable String es) {
        return en == null || es == null ? Optional.empty() : Optional.of(new Bilingual(en, es));
    }

    /** Those of an item that count now, by place. */
    Map<Integer, Bilingual> now(Item item) {
        var at = clock.instant();
        var known = loaded;
        if (known == null || at.isBefore(known.at()) || !at.isBefore(known.at().plus(AT_HAND))) {
            known = new Loaded(at, read());
            loaded = known;
        }
        return known.words().getOrDefault(item, Map.of());
    }

    private Map<Item, Map<Integer, Bilingual>> read() {
        var now = new HashMap<Item, Map<Integer, Bilingual>>();
        for (var each : all()) {
            var pieces = now.computeIfAbsent(each.item(), item -> new HashMap<>());
            each.words().ifPresentOrElse(words -> pieces.put(each.place(), words), () -> pieces.remove(each.place()));
        }
        now.replaceAll((item, pieces) -> Map.copyOf(pieces));
        return Map.copyOf(now);
    }

    /** Adds some. @throws org.springframework.dao.DuplicateKeyException when that number is taken */
    void add(OwnWords own) {
        jdbc.sql("""
                        insert into content_own_words
                          (kind, item, version, place, number, en, es, written_by, written_at)
                        values (:kind, :item, :version, :place, :number, :en, :es, :by, :at)
                        """)
                .param("kind", own.item().kind())
                .param("item", own.item().id())
                .param("version", own.item().version())
                .param("place", own.place())
                .param("number", own.number())
                .param("en", own.words().map(Bilingual::en).orElse(null))
                .param("es", own.words().map(Bilingual::es).orElse(null))
                .param("by", own.by())
                .param("at", DecisionRows.utc(own.at()))
                .update();
        loaded = null;
        if (TransactionSynchronizationManager.isSynchronizationActive()) {
            TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
                @Override
                public void afterCompletion(int status) {
                    // somebody may have read what was there before, or what was not kept
                    loaded = null;
                }
            });
        }
    }
}
