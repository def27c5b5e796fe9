package org.hearthway.medicine.internal;

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
import org.hearthway.medicine.MedicineId;
import org.hearthway.medicine.Medicines.How;
import org.hearthway.medicine.Medicines.Medicine;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.Medicines.Stop;
import org.hearthway.medicine.SecondCheck;
import org.hearthway.medicine.engine.Quantity;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps versions of medicines and their checks. The version is part of both keys, so of two at once one wins. */
@Repository
class MedicineRows {

    private final JdbcClient jdbc;

    MedicineRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All versions of all medicines of a child, newest first. */
    List<Medicine> of(ChildId child) {
        return jdbc.sql("""
                        select m.*, c.checked_by, c.checked_at
                        from medicine m left join medicine_check c
                          on c.medicine_id = m.medicine_id and c.version = m.version
                        where m.child_id = ? order by m.version desc
                        """)
                .param(child.value())
                .query((row, n) -> medicine(row))
                .list();
    }

    void add(Medicine medicine) {
        var data = medicine.data();
        try {
            jdbc.sql("""
                            insert into medicine (medicine_id, child_id, version, name, form, given, dose, amount, unit,
                              purpose_en, purpose_es, since_on, prescriber, stopped_on, stop_reason, entered_by,
                              entered_at)
                            values (:id, :child, :version, :name, :form, :given, :dose, :amount, :unit, :purpose_en,
                              :purpose_es, :since, :prescriber, :stopped, :reason, :by, :at)
                            """)
                    .param("id", medicine.id().value())
                    .param("child", medicine.child().value())
                    .param("version", medicine.version())
                    .param("name", data.name())
                    .param("form", data.form())
                    .param("given", data.how().name())
                    .param("dose", data.dose())
                    .param("amount", data.quantity().map(Quantity::amount).orElse(null))
                    .param("unit", data.quantity().map(q -> q.unit().name()).orElse(null))
                    .param("purpose_en", data.purposeEn())
                    .param("purpose_es", data.purposeEs())
                    .param("since", data.since())
                    .param("prescriber", data.prescriber())
                    .param("stopped", data.stop().map(Stop::on).orElse(null))
                    .param("reason", data.stop().map(Stop::reason).orElse(""))
                    .param("by", medicine.by().value())
                    .param("at", medicine.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }

    void check(Medicine medicine, SecondCheck check) {
        try {
            jdbc.sql("insert into medicine_check (medicine_id, child_id, version, checked_by, checked_at)"
                            + " values (?, ?, ?, ?, ?)")
                    .param(medicine.id().value())
                    .param(medicine.child().value())
                    .param(medicine.version())
                    .param(check.by().value())
                    .param(check.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException confirmed) {
            throw new Overtaken();
        }
    }

    private static Medicine medicine(ResultSet row) throws SQLException {
        var amount = Optional.ofNullable(row.getBigDecimal("amount"));
        var unit = Optional.ofNullable(row.getString("unit")).map(Quantity.Unit::valueOf);
        var stopped = Optional.ofNullable(row.getObject("stopped_on", LocalDate.class));
        var reason = row.getString("stop_reason");
        var data = new MedicineData(
                row.getString("name"),
                row.getString("form"),
                How.valueOf(row.getString("given")),
                row.getString("dose"),
                amount.flatMap(a -> unit.map(u -> new Quantity(a, u))),
                row.getString("purpose_en"),
                row.getString("purpose_es"),
                row.getObject("since_on", LocalDate.class),
                row.getString("prescriber"),
                stopped.map(on -> new Stop(on, reason)));
        return new Medicine(
                new MedicineId(row.getObject("medicine_id", UUID.class)),
                new ChildId(row.getObject("child_id", UUID.class)),
                row.getLong("version"),
                data,
                new AccountId(row.getObject("entered_by", UUID.class)),
                row.getObject("entered_at", OffsetDateTime.class).toInstant(),
                check(row));
    }

    /** The check of a row that was joined with one, if there is one. */
    static Optional<SecondCheck> check(ResultSet row) throws SQLException {
        var by = Optional.ofNullable(row.getObject("checked_by", UUID.class));
        var at = Optional.ofNullable(row.getObject("checked_at", OffsetDateTime.class));
        return by.flatMap(who -> at.map(when -> new SecondCheck(new AccountId(who), when.toInstant())));
    }
}
