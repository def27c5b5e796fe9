package org.hearthway.caseload.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.caseload.engine.Escalation.Turn;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who was told of which item. Turns are added and never altered. */
@Repository
class NeedTurns {

    private final JdbcClient jdbc;

    NeedTurns(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private record Stored(UUID item, Turn turn) {}

    /** The turns of items, in order; nothing for an item that has none. */
    Map<UUID, List<Turn>> of(Collection<UUID> items) {
        if (items.isEmpty()) {
            return Map.of();
        }
        return jdbc
                .sql("select * from need_turn where item in (:items) order by item, turn")
                .param("items", items)
                .query(NeedTurns::row)
                .list()
                .stream()
                .collect(Collectors.groupingBy(Stored::item, Collectors.mapping(Stored::turn, Collectors.toList())));
    }

    void add(UUID item, Turn turn) {
        jdbc.sql("insert into need_turn (item, turn, person, since) values (:item, :turn, :person, :since)")
                .param("item", item)
                .param("turn", turn.number())
                .param("person", turn.person().value())
                .param("since", turn.from().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                .update();
    }

    private static Stored row(ResultSet row, int number) throws SQLException {
        return new Stored(
                row.getObject("item", UUID.class),
                new Turn(
                        row.getInt("turn"),
                        new AccountId(row.getObject("person", UUID.class)),
                        row.getObject("since", OffsetDateTime.class).toInstant()));
    }
}
