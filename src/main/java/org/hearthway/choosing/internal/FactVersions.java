package org.hearthway.choosing.internal;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.choosing.Answer;
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
