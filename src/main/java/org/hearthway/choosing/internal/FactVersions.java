package org.hearthway.choosing.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.FactsEntry;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps the facts of each child, version by version. A version is part of its key, so of two at once one wins. */
@Repository
class FactVersions {

    /** All facts of a child as they stood from then on. */
    record Version(long number, Map<String, Answer> answers) {

        private static final Version NONE = new Version(0, Map.of());

        Version {
            answers = Map.copyOf(answers);
        }
    }

    private final JdbcClient jdbc;

    FactVersions(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The newest version; one without facts when none were entered. */
    Version newest(ChildId child) {
        Optional<Version> newest = jdbc.sql("select version, facts from choosing_facts where child = ?"
                        + " order by version desc fetch first 1 rows only")
                .param(child.value())
                .query((row, n) -> new Version(row.getLong("version"), FactsJson.read(row.getString("facts"))))
                .optional();
        return newest.orElse(Version.NONE);
    }

    /** All versions, the newest first. */
    List<FactsEntry> all(ChildId child) {
        return jdbc.sql("select version, facts, entered_by, entered_at from choosing_facts where child = ?"
                        + " order by version desc")
                .param(child.value())
                .query((row, n) -> entry(row))
                .list();
    }

    private static FactsEntry entry(ResultSet row) throws SQLException {
        var facts = new HashMap<String, Answer.Data>();
        FactsJson.read(row.getString("facts")).forEach((fact, answer) -> facts.put(fact, answer.data()));
        return new FactsEntry(
                row.getLong("version"),
                new AccountId(row.getObject("entered_by", UUID.class)),
                row.getObject("entered_at", OffsetDateTime.class).toInstant(),
                facts);
    }

    void add(ChildId child, Version version, AccountId by, Instant at) {
        try {
            jdbc.sql("insert into choosing_facts (child, version, facts, entered_by, entered_at)"
                            + " values (?, ?, ?, ?, ?)")
                    .param(child.value())
                    .param(version.number())
                    .param(FactsJson.written(version.answers()))
                    .param(by.value())
                    .param(at.atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }
}
