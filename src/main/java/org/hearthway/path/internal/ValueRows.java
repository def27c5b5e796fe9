package org.hearthway.path.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.internal.ValueHistory.Given;
import org.hearthway.path.internal.ValueHistory.Made;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Keeps what the clinic says of the paths' values, and has it at hand: every plan asks for it. A change counts at once
 * where it was made and elsewhere within {@link #AT_HAND}. A change's number is part of its key, so of two at once one
 * wins.
 */
@Repository
class ValueRows {

    /** How long what was read is used without looking again, for clinics that run more than one program. */
    private static final Duration AT_HAND = Duration.ofSeconds(10);

    private record Loaded(Instant at, Map<String, ValueHistory> paths) {}

    private final JdbcClient jdbc;
    private final Clock clock;
    private final AtomicLong writes = new AtomicLong();
    private volatile @Nullable Loaded loaded;

    ValueRows(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** What was said of a path. */
    ValueHistory of(String pathway) {
        // who has written reads what was written, though nobody else does before the end of the transaction
        if (TransactionSynchronizationManager.getResource(this) instanceof Loaded mine) {
            return mine.paths().getOrDefault(pathway, ValueHistory.NONE);
        }
        var now = clock.instant();
        var known = loaded;
        if (known == null
                || now.isBefore(known.at())
                || !now.isBefore(known.at().plus(AT_HAND))) {
            known = load(now);
        }
        return known.paths().getOrDefault(pathway, ValueHistory.NONE);
    }

    /** The same, looked up. */
    ValueHistory fresh(String pathway) {
        return read().getOrDefault(pathway, ValueHistory.NONE);
    }

    private Loaded load(Instant now) {
        var before = writes.get();
        var read = new Loaded(now, read());
        if (writes.get() == before) {
            loaded = read;
        }
        return read;
    }

    private record Line(String pathway, long number, Given given) {}

    private Map<String, ValueHistory> read() {
        var lines = jdbc.sql("""
                        select pathway, number, stage, kind, part, before_it, shipped, own from path_value
                        order by pathway, number, stage, kind, part""").query(ValueRows::line).list().stream()
                .collect(Collectors.groupingBy(line -> line.pathway() + " " + line.number()));
        var paths = new HashMap<String, List<Made>>();
        jdbc.sql("""
                        select pathway, number, undoes, reason, account_id, made_at from path_value_change
                        order by pathway, number""")
                .query((row, n) -> paths.computeIfAbsent(row.getString("pathway"), path -> new ArrayList<>())
                        .add(made(row, lines)))
                .list();
        return paths.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, path -> new ValueHistory(path.getValue())));
    }

    private static Line line(ResultSet row, int n) throws SQLException {
        var place = new ValuePlace(
                row.getString("stage"), ValuePlace.Kind.valueOf(row.getString("kind")), row.getString("part"));
        return new Line(
                row.getString("pathway"),
                row.getLong("number"),
                new Given(
                        place,
                        Amount.parse(row.getString("before_it")),
                        Amount.parse(row.getString("shipped")),
                        Optional.ofNullable(row.getString("own")).map(Amount::parse)));
    }

    private static Made made(ResultSet row, Map<String, List<Line>> lines) throws SQLException {
        var number = row.getLong("number");
        return new Made(
                number,
                lines.getOrDefault(row.getString("pathway") + " " + number, List.of()).stream()
                        .map(Line::given)
                        .toList(),
                Optional.ofNullable(row.getObject("undoes", Long.class)),
                row.getString("reason"),
                Optional.ofNullable(row.getObject("account_id", UUID.class)).map(AccountId::new),
                row.getObject("made_at", OffsetDateTime.class).toInstant());
    }

    /** Adds a change. @throws Overtaken when its number is taken */
    void add(String pathway, Made made, Viewer by) {
        try {
            jdbc.sql("""
                            insert into path_value_change (pathway, number, undoes, reason, actor, account_id, made_at)
                            values (?, ?, ?, ?, ?, ?, ?)""")
                    .param(pathway)
                    .param(made.number())
                    .param(made.undoes().orElse(null))
                    .param(made.reason())
                    .param(by.tag())
                    .param(made.by().map(AccountId::value).orElse(null))
                    .param(made.at().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
        made.given().forEach(given -> add(pathway, made.number(), given));
        written();
    }

    private void add(String pathway, long number, Given given) {
        jdbc.sql("""
                        insert into path_value (pathway, number, stage, kind, part, before_it, shipped, own)
                        values (?, ?, ?, ?, ?, ?, ?, ?)""")
                .param(pathway)
                .param(number)
                .param(given.place().stage())
                .param(given.place().kind().name())
                .param(given.place().part())
                .param(given.before().text())
                .param(given.shipped().text())
                .param(given.own().map(Amount::text).orElse(null))
                .update();
    }

    private void written() {
        forget();
        if (TransactionSynchronizationManager.isSynchronizationActive()) {
            if (TransactionSynchronizationManager.hasResource(this)) {
                TransactionSynchronizationManager.unbindResource(this);
            } else {
                TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
                    @Override
                    public void afterCompletion(int status) {
                        TransactionSynchronizationManager.unbindResourceIfPossible(ValueRows.this);
                        // somebody may have read what was there before, or what was not kept
                        forget();
                    }
                });
            }
            TransactionSynchronizationManager.bindResource(this, new Loaded(clock.instant(), read()));
        }
    }

    private void forget() {
        writes.incrementAndGet();
        loaded = null;
    }

    /** The entries of children that go on under another one: nobody looks at their plans. */
    Set<ChildId> folded() {
        return jdbc.sql("select id from child where folded_into is not null").query(UUID.class).list().stream()
                .map(ChildId::new)
                .collect(Collectors.toSet());
    }
}
