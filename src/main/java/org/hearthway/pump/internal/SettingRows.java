package org.hearthway.pump.internal;

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
import org.hearthway.pump.PumpSettings.Check;
import org.hearthway.pump.PumpSettings.Setting;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps settings and their checks. Numbers are part of both keys, so of two at once one wins. */
@Repository
class SettingRows {

    private final JdbcClient jdbc;

    SettingRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All settings of a child, newest first. */
    List<Setting> of(ChildId child) {
        return jdbc.sql("""
                        select s.setting_number, s.strength, s.daily_dose, s.printed_on, s.entered_by, s.entered_at,
                          c.checked_by, c.checked_at
                        from pump_setting s left join pump_setting_check c
                          on c.child_id = s.child_id and c.setting_number = s.setting_number
                        where s.child_id = ? order by s.setting_number desc
                        """)
                .param(child.value())
                .query((row, n) -> setting(row))
                .list();
    }

    void add(ChildId child, Setting setting) {
        try {
            jdbc.sql("""
                            insert into pump_setting (child_id, setting_number, strength, daily_dose, printed_on,
                              entered_by, entered_at) values (?, ?, ?, ?, ?, ?, ?)
                            """)
                    .param(child.value())
                    .param(setting.number())
                    .param(setting.strength().microgramsPerMillilitre())
                    .param(setting.dose().microgramsPerDay())
                    .param(setting.on())
                    .param(setting.by().value())
                    .param(setting.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
    }

    void check(ChildId child, long number, Check check) {
        try {
            jdbc.sql("insert into pump_setting_check (child_id, setting_number, checked_by, checked_at)"
                            + " values (?, ?, ?, ?)")
                    .param(child.value())
                    .param(number)
                    .param(check.by().value())
                    .param(check.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException confirmed) {
            throw new Overtaken();
        }
    }

    private static Setting setting(ResultSet row) throws SQLException {
        var checkedBy = Optional.ofNullable(row.getObject("checked_by", UUID.class));
        var checkedAt = Optional.ofNullable(row.getObject("checked_at", OffsetDateTime.class));
        return new Setting(
                row.getLong("setting_number"),
                new Concentration(row.getBigDecimal("strength")),
                new DailyDose(row.getBigDecimal("daily_dose")),
                row.getObject("printed_on", LocalDate.class),
                new AccountId(row.getObject("entered_by", UUID.class)),
                row.getObject("entered_at", OffsetDateTime.class).toInstant(),
                checkedBy.flatMap(by -> checkedAt.map(at -> new Check(new AccountId(by), at.toInstant()))));
    }
}
