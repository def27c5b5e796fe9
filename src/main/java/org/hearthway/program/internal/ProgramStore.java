package org.hearthway.program.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.Programs.KeptDraft;
import org.hearthway.program.Programs.Version;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The rows of versions and drafts. */
@Component
class ProgramStore {

    private static final String COLUMNS = "select version_number, effective, body, author, saved_at, reason";

    private final JdbcClient jdbc;

    ProgramStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    static OffsetDateTime utc(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    Optional<Version> latest(ChildId child) {
        return jdbc.sql(COLUMNS + " from program_version where child = :child and version_number ="
                        + " (select max(version_number) from program_version where child = :child)")
                .param("child", child.value())
                .query((row, n) -> version(row))
                .optional();
    }

    List<Version> all(ChildId child) {
        return jdbc.sql(COLUMNS + " from program_version where child = :child order by version_number desc")
                .param("child", child.value())
                .query((row, n) -> version(row))
                .list();
    }

    private static Version version(java.sql.ResultSet row) throws java.sql.SQLException {
        var body = ProgramJson.body(row.getString("body"));
        return new Version(
                row.getInt("version_number"),
                row.getObject("effective", LocalDate.class),
                body.lines(),
                new AccountId(row.getObject("author", UUID.class)),
                row.getObject("saved_at", OffsetDateTime.class).toInstant(),
                row.getString("reason"),
                body.toFamily());
    }

    /**
     * Inserts a version.
     *
     * @throws Overtaken when another has the number already
     */
    void insert(ChildId child, Version version) {
        try {
            jdbc.sql("insert into program_version (child, version_number, effective, body, author, saved_at, reason)"
                            + " values (:child, :number, :effective, :body, :author, :at, :reason)")
                    .param("child", child.value())
                    .param("number", version.number())
                    .param("effective", version.effective())
                    .param("body", ProgramJson.body(version.lines(), version.toFamily()))
                    .param("author", version.author().value())
                    .param("at", utc(version.at()))
                    .param("reason", version.reason())
                    .update();
        } catch (DuplicateKeyException | ConcurrencyFailureException taken) {
            // the database's message carries the row; what the person needs is the fact
            throw new Overtaken();
        }
    }

    Optional<KeptDraft> draft(AccountId author, ChildId child) {
        return jdbc.sql("select body, seen, kept_at from program_draft where author = :author and child = :child")
                .param("author", author.value())
                .param("child", child.value())
                .query((row, n) -> new KeptDraft(
                        ProgramJson.draft(row.getString("body")),
                        row.getInt("seen"),
                        row.getObject("kept_at", OffsetDateTime.class).toInstant()))
                .optional();
    }

    void keep(AccountId author, ChildId child, Draft draft, int seen, Instant at) {
        var body = ProgramJson.draft(draft);
        var updated = jdbc.sql("update program_draft set body = :body, seen = :seen, kept_at = :at"
                        + " where author = :author and child = :child")
                .param("body", body)
                .param("seen", seen)
                .param("at", utc(at))
                .param("author", author.value())
                .param("child", child.value())
                .update();
        if (updated == 0) {
            jdbc.sql("insert into program_draft (author, child, body, seen, kept_at)"
                            + " values (:author, :child, :body, :seen, :at)")
                    .param("author", author.value())
                    .param("child", child.value())
                    .param("body", body)
                    .param("seen", seen)
                    .param("at", utc(at))
                    .update();
        }
    }

    void drop(AccountId author, ChildId child) {
        jdbc.sql("delete from program_draft where author = :author and child = :child")
                .param("author", author.value())
                .param("child", child.value())
                .update();
    }
}
