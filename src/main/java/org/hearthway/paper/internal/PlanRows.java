package org.hearthway.paper.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.paper.EmergencySheet.Plan;
import org.hearthway.paper.EmergencySheet.PlanData;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps signed plans. A plan's number is part of its key, so of two signed at once one wins. */
@Repository
class PlanRows {

    private final JdbcClient jdbc;

    PlanRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Plan> newest(ChildId child) {
        return jdbc.sql("""
                        select plan_number, surgeon_line, catheter, withdrawal, storm, signed_by, signed_by_name,
                          signed_at
                        from emergency_plan where child = ? order by plan_number desc fetch first 1 rows only
                        """).param(child.value()).query((row, n) -> plan(row)).optional();
    }

    void add(ChildId child, Plan plan) {
        try {
            jdbc.sql("""
                            insert into emergency_plan (child, plan_number, surgeon_line, catheter, withdrawal, storm,
                              signed_by, signed_by_name, signed_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?)
                            """)
                    .param(child.value())
                    .param(plan.number())
                    .param(plan.data().surgeonLine())
                    .param(plan.data().catheter())
                    .param(plan.data().withdrawal())
                    .param(plan.data().storm())
                    .param(plan.signedBy().value())
                    .param(plan.signedByName())
                    .param(plan.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }

    private static Plan plan(ResultSet row) throws SQLException {
        return new Plan(
                row.getLong("plan_number"),
                new PlanData(
                        row.getString("surgeon_line"),
                        row.getString("catheter"),
                        row.getString("withdrawal"),
                        row.getString("storm")),
                new AccountId(row.getObject("signed_by", UUID.class)),
                row.getString("signed_by_name"),
                row.getObject("signed_at", OffsetDateTime.class).toInstant());
    }
}
