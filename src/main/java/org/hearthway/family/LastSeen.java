package org.hearthway.family;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Remembers when a person last opened a child's day, so that the page can tell what changed since. What is new stays
 * new for the whole of the person's day, or until it is put away.
 */
@Component
class LastSeen {

    private static final Duration POINTED_OUT = Duration.ofDays(ChangedLines.DAYS_SHOWN);

    private record Row(Instant seenAt, Instant newSince, long version) {}

    private final JdbcClient jdbc;

    LastSeen(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Notes that the person is here and says since when changes are new; on the first visit nothing is. */
    Instant open(Reader reader) {
        var now = stored(reader.instant());
        var row = row(reader.viewer(), reader.id());
        if (row.isEmpty()) {
            begin(reader, now);
            return now;
        }
        var seen = row.get();
        var since = newSince(reader, seen);
        write(reader, seen, now, since);
        return since;
    }

    /**
     * Since when a change is pointed out where it stands: for as long as it is new to the person, and for a week at
     * least, because a day that moved is looked for again. Does not count as being here.
     */
    Instant pointedOut(Reader reader) {
        var week = reader.instant().minus(POINTED_OUT);
        return newSince(reader).filter(week::isAfter).orElse(week);
    }

    /** Since when changes are new to the person; empty for one who was never here. */
    Optional<Instant> newSince(Reader reader) {
        return row(reader.viewer(), reader.id()).map(seen -> newSince(reader, seen));
    }

    private static Instant newSince(Reader reader, Row seen) {
        return isToday(reader, seen) ? seen.newSince() : seen.seenAt();
    }

    private static boolean isToday(Reader reader, Row seen) {
        return reader.local(seen.seenAt()).toLocalDate().equals(reader.today());
    }

    /** Puts away what is new so far. */
    void putAway(Reader reader) {
        var now = stored(reader.instant());
        row(reader.viewer(), reader.id()).ifPresent(seen -> write(reader, seen, now, now));
    }

    private Optional<Row> row(Viewer.Person viewer, ChildId child) {
        return jdbc.sql("select seen_at, new_since, version from last_seen where account_id = ? and child_id = ?")
                .params(viewer.account().value(), child.value())
                .query((rs, n) -> new Row(
                        rs.getObject("seen_at", OffsetDateTime.class).toInstant(),
                        rs.getObject("new_since", OffsetDateTime.class).toInstant(),
                        rs.getLong("version")))
                .optional();
    }

    private void begin(Reader reader, Instant now) {
        try {
            jdbc.sql("insert into last_seen (account_id, child_id, seen_at, new_since, version) values (?, ?, ?, ?, 1)")
                    .params(reader.viewer().account().value(), reader.id().value(), utc(now), utc(now))
                    .update();
        } catch (DuplicateKeyException openedTwiceAtOnce) {
            // the other page has written the same moment
        }
    }

    private void write(Reader reader, Row seen, Instant now, Instant since) {
        // of two pages opened at once one wins, and both have the same moment to tell
        jdbc.sql("update last_seen set seen_at = ?, new_since = ?, version = version + 1"
                        + " where account_id = ? and child_id = ? and version = ?")
                .params(
                        utc(now),
                        utc(since),
                        reader.viewer().account().value(),
                        reader.id().value(),
                        seen.version())
                .update();
    }

    private static Instant stored(Instant instant) {
        return instant.truncatedTo(ChronoUnit.MICROS);
    }

    private static OffsetDateTime utc(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }
}
