package org.hearthway.pump.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.pump.PumpEntry;
import org.hearthway.testing.LeanClinic;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What a clinic kept before it had a book stands in the book, and counts as it did. */
class BookOfBeforeTests {

    private static final LocalDate FILLED = LocalDate.of(2026, 1, 15);
    private static final LocalDate ALARM = LocalDate.of(2026, 4, 6);

    private final JdbcDataSource source = new JdbcDataSource();
    private final ChildId child = ChildId.random();
    private final UUID nurse = UUID.randomUUID();
    private final UUID physician = UUID.randomUUID();

    private void migrateTo(String version) {
        source.setURL("jdbc:h2:mem:" + child + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;"
                + "DB_CLOSE_DELAY=-1");
        source.setUser("sa");
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration")
                .target(version)
                .load()
                .migrate();
    }

    @Test
    void fillsKeepTheirDatesAndSettingsTheirChecks() {
        migrateTo("85");
        var jdbc = JdbcClient.create(source);
        fill(jdbc, 1, FILLED.minusDays(100), FILLED, "2025-10-07T15:00Z");
        fill(jdbc, 2, FILLED, ALARM, "2026-01-15T16:00Z");
        setting(jdbc, 1, "110", "2026-01-15T16:10Z");
        setting(jdbc, 2, "132", "2026-02-03T16:10Z");
        jdbc.sql("insert into pump_setting_check values (?, 1, ?, ?)")
                .params(child.value(), physician, OffsetDateTime.parse("2026-01-15T16:20Z"))
                .update();

        migrateTo("latest");

        var book = new EntryRows(jdbc, new DosingRows(jdbc)).of(child);
        assertThat(book).extracting(PumpEntry::number).containsExactly(1L, 2L, 3L, 4L);
        var ledger = new Ledger(book, LeanClinic.NEW_YORK);
        assertThat(ledger.fill()).hasValueSatisfying(fill -> {
            assertThat(fill.at().atZone(LeanClinic.NEW_YORK).toLocalDate()).isEqualTo(FILLED);
            assertThat(fill.what().printedAlarm()).contains(ALARM);
            assertThat(((PumpEntry.Refill) fill.what()).details().note()).isEqualTo("fill 2");
            assertThat(fill.by()).isEqualTo(new AccountId(nurse));
        });
        assertThat(ledger.lastSetting().flatMap(entry -> entry.what().setting()))
                .contains(Pages.setting("500", "110"));
        assertThat(ledger.waiting())
                .singleElement()
                .satisfies(waits ->
                        assertThat(waits.what().setting()).isEqualTo(Optional.of(Pages.setting("500", "132"))));
    }

    private void fill(JdbcClient jdbc, int number, LocalDate filled, LocalDate alarm, String recorded) {
        jdbc.sql("insert into pump_fill values (?, ?, ?, ?, 5, 180, ?, ?, ?)")
                .params(child.value(), number, filled, alarm, "fill " + number, nurse, OffsetDateTime.parse(recorded))
                .update();
    }

    private void setting(JdbcClient jdbc, int number, String dose, String entered) {
        jdbc.sql("insert into pump_setting values (?, ?, ?, ?, ?, ?, ?)")
                .params(
                        child.value(),
                        number,
                        new BigDecimal("500"),
                        new BigDecimal(dose),
                        FILLED,
                        nurse,
                        OffsetDateTime.parse(entered))
                .update();
    }
}
