package org.hearthway.medicine.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.medicine.MedicineId;
import org.hearthway.medicine.SecondCheck;
import org.hearthway.medicine.engine.TaperCalendar;
import org.hearthway.medicine.engine.TaperCalendar.Step;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps taper calendars and their checks. Numbers are part of both keys, so of two at once one wins. */
@Repository
class TaperRows {

    /**
     * A calendar as kept.
     *
     * @param medicineVersion the version of the medicine that it was signed for
     */
    record Kept(
            MedicineId medicine,
            ChildId child,
            long number,
            long medicineVersion,
            TaperCalendar calendar,
            AccountId by,
            Instant at,
            Optional<SecondCheck> check) {}

    private record Key(UUID medicine, long number) {}

    private final JdbcClient jdbc;

    TaperRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All calendars of a child, newest first. */
    List<Kept> of(ChildId child) {
        var steps = new HashMap<Key, List<Step>>();
        jdbc.sql("select medicine_id, taper_number, from_on, dose from taper_step where child_id = ? order by from_on")
                .param(child.value())
                .query(row -> {
                    steps.computeIfAbsent(
                                    new Key(row.getObject("medicine_id", UUID.class), row.getLong("taper_number")),
                                    key -> new ArrayList<>())
                            .add(new Step(row.getObject("from_on", LocalDate.class), row.getString("dose")));
                });
        return jdbc.sql("""
                        select t.*, c.checked_by, c.checked_at
                        from taper t left join taper_check c
                          on c.medicine_id = t.medicine_id and c.taper_number = t.taper_number
                        where t.child_id = ? order by t.taper_number desc
                        """)
                .param(child.value())
                .query((row, n) -> {
                    var key = new Key(row.getObject("medicine_id", UUID.class), row.getLong("taper_number"));
                    return new Kept(
                            new MedicineId(key.medicine()),
                            child,
                            key.number(),
                            row.getLong("medicine_version"),
                            new TaperCalendar(
                                    steps.getOrDefault(key, List.of()),
                                    Optional.ofNullable(row.getObject("stops_on", LocalDate.class))),
                            new AccountId(row.getObject("signed_by", UUID.class)),
                            row.getObject("signed_at", OffsetDateTime.class).toInstant(),
                            MedicineRows.check(row));
                })
                .list();
    }

    void add(Kept taper) {
        try {
            jdbc.sql("""
                            insert into taper (medicine_id, child_id, taper_number, medicine_version, stops_on,
                              signed_by, signed_at) values (?, ?, ?, ?, ?, ?, ?)
                            """)
                    .param(taper.medicine().value())
                    .param(taper.child().value())
                    .param(taper.number())
                    .param(taper.medicineVersion())
                    .param(taper.calendar().stopsOn().orElse(null))
                    .param(taper.by().value())
                    .param(taper.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
        for (var step : taper.calendar().steps()) {
            jdbc.sql("insert into taper_step (medicine_id, child_id, taper_number, from_on, dose)"
                            + " values (?, ?, ?, ?, ?)")
                    .param(taper.medicine().value())
                    .param(taper.child().value())
                    .param(taper.number())
                    .param(step.from())
                    .param(step.dose())
                    .update();
        }
    }

    void check(Kept taper, SecondCheck check) {
        try {
            jdbc.sql("insert into taper_check (medicine_id, child_id, taper_number, checked_by, checked_at)"
                            + " values (?, ?, ?, ?, ?)")
                    .param(taper.medicine().value())
                    .param(taper.child().value())
                    .param(taper.number())
                    .param(check.by().value())
                    .param(check.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException confirmed) {
            throw new Overtaken();
        }
    }
}
