package org.hearthway.equipment.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Place;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps every version of a series with its casts. The version is part of the key, so of two at once one wins. */
@Repository
class CastRows {

    private record CastOf(UUID series, CastSeries.Cast cast) {}

    private final JdbcClient jdbc;

    CastRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A child's series as they stand now, newest first. */
    List<CastSeries> of(ChildId child) {
        Map<UUID, List<CastSeries.Cast>> casts = jdbc
                .sql("""
                        select * from cast_worn c where c.child = :child and c.version =
                          (select max(v.version) from cast_series v where v.id = c.series)
                        order by c.series, c.cast_number
                        """)
                .param("child", child.value())
                .query((row, n) -> new CastOf(row.getObject("series", UUID.class), cast(row)))
                .list()
                .stream()
                .collect(Collectors.groupingBy(CastOf::series, Collectors.mapping(CastOf::cast, Collectors.toList())));
        return jdbc.sql("""
                        select * from cast_series s where s.child = :child and s.version =
                          (select max(v.version) from cast_series v where v.id = s.id)
                        order by s.begun_on desc, s.id
                        """)
                .param("child", child.value())
                .query((row, n) -> series(row, casts))
                .list();
    }

    /** Of each child, the series that are not over yet. */
    Map<ChildId, List<CastSeries>> running() {
        Map<UUID, List<CastSeries.Cast>> casts =
                jdbc
                        .sql("""
                        select c.* from cast_worn c join cast_series s on s.id = c.series and s.version = c.version
                        where s.ended_on is null and s.version = (select max(v.version) from cast_series v where v.id = s.id)
                        order by c.series, c.cast_number
                        """)
                        .query((row, n) -> new CastOf(row.getObject("series", UUID.class), cast(row)))
                        .list()
                        .stream()
                        .collect(Collectors.groupingBy(
                                CastOf::series, Collectors.mapping(CastOf::cast, Collectors.toList())));
        return jdbc
                .sql("""
                        select * from cast_series s where s.ended_on is null and s.version =
                          (select max(v.version) from cast_series v where v.id = s.id)
                          and s.child in (select id from child_present)
                        order by s.begun_on desc, s.id
                        """)
                .query((row, n) -> Map.entry(new ChildId(row.getObject("child", UUID.class)), series(row, casts)))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }

    void add(ChildId child, UUID id, long version, CastSeries.Data data, Viewer by, OffsetDateTime at) {
        try {
            jdbc.sql("""
                            insert into cast_series (id, version, child, place, side, begun_on, every_days, last_off,
                              ended_on, entered_by, entered_at)
                            values (:id, :version, :child, :place, :side, :begun, :every, :off, :ended, :by, :at)
                            """)
                    .param("id", id)
                    .param("version", version)
                    .param("child", child.value())
                    .param("place", data.place().name())
                    .param("side", data.side().name())
                    .param("begun", data.from())
                    .param("every", data.everyDays())
                    .param("off", data.lastOff().orElse(null))
                    .param("ended", data.ended().orElse(null))
                    .param("by", by.tag())
                    .param("at", at)
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
        for (var number = 0; number < data.casts().size(); number++) {
            add(child, id, version, number, data.casts().get(number));
        }
    }

    private void add(ChildId child, UUID series, long version, int number, CastSeries.Cast cast) {
        jdbc.sql("""
                        insert into cast_worn (series, version, cast_number, child, put_on, taken_off, degrees, skin)
                        values (:series, :version, :number, :child, :on, :off, :degrees, :skin)
                        """)
                .param("series", series)
                .param("version", version)
                .param("number", number)
                .param("child", child.value())
                .param("on", cast.on())
                .param("off", cast.off().orElse(null))
                .param("degrees", cast.degrees().orElse(null))
                .param("skin", cast.skin().strip())
                .update();
    }

    private static CastSeries.Cast cast(ResultSet row) throws SQLException {
        return new CastSeries.Cast(
                row.getObject("put_on", LocalDate.class),
                Optional.ofNullable(row.getObject("taken_off", LocalDate.class)),
                Optional.ofNullable(row.getObject("degrees", Integer.class)),
                row.getString("skin"));
    }

    private static CastSeries series(ResultSet row, Map<UUID, List<CastSeries.Cast>> casts) throws SQLException {
        var id = row.getObject("id", UUID.class);
        var data = new CastSeries.Data(
                Place.valueOf(row.getString("place")),
                Place.Side.valueOf(row.getString("side")),
                row.getObject("begun_on", LocalDate.class),
                row.getInt("every_days"),
                Optional.ofNullable(row.getObject("last_off", LocalDate.class)),
                Optional.ofNullable(row.getObject("ended_on", LocalDate.class)),
                casts.getOrDefault(id, List.of()));
        return new CastSeries(id, data, row.getLong("version"));
    }
}
