package org.hearthway.choosing.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.choosing.Decision;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps what was decided. A number is part of its key, so of two written down at once one wins. */
@Repository
class WrittenDecisions {

    private final JdbcClient jdbc;

    WrittenDecisions(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All decisions of a child, newest first, without the names of their paths. */
    List<Decision> of(ChildId child) {
        return jdbc.sql("select * from choosing_decision where child = ? order by decision_number desc")
                .param(child.value())
                .query((row, n) -> decision(row))
                .list();
    }

    void add(ChildId child, Decision decision) {
        var data = decision.data();
        try {
            jdbc.sql("insert into choosing_decision (child, decision_number, pathway, decided_on, present, reason,"
                            + " entered_by, entered_at) values (?, ?, ?, ?, ?, ?, ?, ?)")
                    .param(child.value())
                    .param(decision.number())
                    .param(data.path().orElse(null))
                    .param(data.day())
                    .param(data.present())
                    .param(data.reason())
                    .param(decision.by().value())
                    .param(decision.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }

    private static Decision decision(ResultSet row) throws SQLException {
        return new Decision(
                row.getLong("decision_number"),
                new Decision.Data(
                        Optional.ofNullable(row.getString("pathway")),
                        row.getObject("decided_on", LocalDate.class),
                        row.getString("present"),
                        row.getString("reason")),
                Optional.empty(),
                new AccountId(row.getObject("entered_by", UUID.class)),
                row.getObject("entered_at", OffsetDateTime.class).toInstant());
    }
}
