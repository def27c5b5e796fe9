package org.hearthway.program.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.program.ProgramPauses.Asked;
import org.hearthway.program.ProgramPauses.Pause;
import org.hearthway.program.ProgramPauses.Why;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The rows of pauses. */
@Component
class PauseRows {

    private final JdbcClient jdbc;

    PauseRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Those that hold or held on some day, the latest first. */
    List<Pause> of(ChildId child) {
        return jdbc.sql("""
                        select p.number, p.first_day, p.last_day, p.why, p.note, p.said_by_name, p.said_at,
                          r.first_day as goes_on
                        from program_pause p left join program_resumed r on r.pause = p.number
                        where p.child = :child order by p.first_day desc, p.number desc""").param("child", child.value()).query((row, n) -> pause(row)).list().stream()
                .filter(pause ->
                        pause.end().filter(end -> !end.isAfter(pause.from())).isEmpty())
                .toList();
    }

    private static Pause pause(ResultSet row) throws SQLException {
        var last = Optional.ofNullable(row.getObject("last_day", LocalDate.class));
        var goesOn = Optional.ofNullable(row.getObject("goes_on", LocalDate.class));
        return new Pause(
                row.getLong("number"),
                row.getObject("first_day", LocalDate.class),
                goesOn.or(() -> last.map(day -> day.plusDays(1))),
                Why.valueOf(row.getString("why")),
                row.getString("note"),
                row.getString("said_by_name"),
                row.getObject("said_at", OffsetDateTime.class).toInstant());
    }

    void add(ChildId child, Viewer.Person by, Instant at, Asked asked) {
        jdbc.sql("""
                        insert into program_pause
                          (child, first_day, last_day, why, note, said_by, said_by_name, said_at)
                        values (:child, :first, :last, :why, :note, :by, :name, :at)""")
                .param("child", child.value())
                .param("first", asked.from())
                .param("last", asked.last().orElse(null))
                .param("why", asked.why().name())
                .param("note", asked.note().strip())
                .param("by", by.account().value())
                .param("name", by.name())
                .param("at", ProgramStore.utc(at))
                .update();
    }

    /**
     * Ends a pause.
     *
     * @throws Overtaken when it has ended already
     */
    void goOn(ChildId child, Viewer.Person by, Instant at, long number, LocalDate first) {
        try {
            jdbc.sql("""
                            insert into program_resumed (pause, child, first_day, said_by, said_by_name, said_at)
                            values (:pause, :child, :first, :by, :name, :at)""")
                    .param("pause", number)
                    .param("child", child.value())
                    .param("first", first)
                    .param("by", by.account().value())
                    .param("name", by.name())
                    .param("at", ProgramStore.utc(at))
                    .update();
        } catch (DuplicateKeyException | ConcurrencyFailureException ended) {
            throw new Overtaken();
        }
    }
}
