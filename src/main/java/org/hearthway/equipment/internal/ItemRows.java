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
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Place;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps every version of an item with its looks. The version is part of the key, so of two at once one wins. */
@Repository
class ItemRows {

    /** The newest version of an item. */
    record Row(UUID id, long version, Item.Data data) {}

    private record LookOf(UUID item, Item.Look look) {}

    private final JdbcClient jdbc;

    ItemRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A child's items as they stand now, those given last first. */
    List<Row> of(ChildId child) {
        Map<UUID, List<Item.Look>> looks = jdbc
                .sql("""
                        select * from equipment_look l where l.child = :child and l.version =
                          (select max(v.version) from equipment_item v where v.id = l.item)
                        order by l.item, l.look_number
                        """)
                .param("child", child.value())
                .query((row, n) -> new LookOf(row.getObject("item", UUID.class), look(row)))
                .list()
                .stream()
                .collect(Collectors.groupingBy(LookOf::item, Collectors.mapping(LookOf::look, Collectors.toList())));
        return jdbc.sql("""
                        select * from equipment_item i where i.child = :child and i.version =
                          (select max(v.version) from equipment_item v where v.id = i.id)
                        order by i.given_on desc, i.id
                        """)
                .param("child", child.value())
                .query((row, n) -> row(row, looks))
                .list();
    }

    /** Of each child, what is in use and was seen not to fit at some look; a later look may have found it well again. */
    Map<ChildId, List<Row>> notFitting() {
        var newest = """
                i.back_on is null and i.version = (select max(v.version) from equipment_item v where v.id = i.id)
                  and i.child in (select id from child_present)
                  and exists (select 1 from equipment_look x where x.item = i.id and x.version = i.version
                    and x.outcome <> 'FITS')
                """;
        Map<UUID, List<Item.Look>> looks = jdbc
                .sql("select l.* from equipment_look l join equipment_item i on i.id = l.item and i.version = l.version"
                        + " where " + newest + " order by l.item, l.look_number")
                .query((row, n) -> new LookOf(row.getObject("item", UUID.class), look(row)))
                .list()
                .stream()
                .collect(Collectors.groupingBy(LookOf::item, Collectors.mapping(LookOf::look, Collectors.toList())));
        return jdbc
                .sql("select * from equipment_item i where " + newest + " order by i.given_on desc, i.id")
                .query((row, n) -> Map.entry(new ChildId(row.getObject("child", UUID.class)), row(row, looks)))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }

    void add(ChildId child, UUID id, long version, Item.Data data, Viewer by, OffsetDateTime at) {
        try {
            jdbc.sql("""
                            insert into equipment_item (id, version, child, kind, place, side, given_on, lent_until,
                              by_day, by_night, schedule, build_up, skin_every, growth_every, back_on, entered_by,
                              entered_at)
                            values (:id, :version, :child, :kind, :place, :side, :given, :lent, :byDay, :byNight,
                              :schedule, :buildUp, :skin, :growth, :back, :by, :at)
                            """)
                    .param("id", id)
                    .param("version", version)
                    .param("child", child.value())
                    .param("kind", data.kind())
                    .param("place", data.place().map(Enum::name).orElse(null))
                    .param("side", data.side().map(Enum::name).orElse(null))
                    .param("given", data.given())
                    .param("lent", data.lentUntil().orElse(null))
                    .param("byDay", data.wear().byDay().orElse(null))
                    .param("byNight", data.wear().byNight().orElse(null))
                    .param("schedule", data.wear().schedule().strip())
                    .param("buildUp", data.wear().buildUp().strip())
                    .param("skin", data.skinEvery().orElse(null))
                    .param("growth", data.growthEvery().orElse(null))
                    .param("back", data.back().orElse(null))
                    .param("by", by.tag())
                    .param("at", at)
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
        for (var number = 0; number < data.looks().size(); number++) {
            add(child, id, version, number, data.looks().get(number));
        }
    }

    private void add(ChildId child, UUID item, long version, int number, Item.Look look) {
        jdbc.sql("""
                        insert into equipment_look (item, version, look_number, child, what, looked_on, outcome,
                          next_on, note)
                        values (:item, :version, :number, :child, :what, :day, :outcome, :next, :note)
                        """)
                .param("item", item)
                .param("version", version)
                .param("number", number)
                .param("child", child.value())
                .param("what", look.what().name())
                .param("day", look.day())
                .param("outcome", look.outcome().name())
                .param("next", look.next().orElse(null))
                .param("note", look.note().strip())
                .update();
    }

    private static Item.Look look(ResultSet row) throws SQLException {
        return new Item.Look(
                Item.What.valueOf(row.getString("what")),
                row.getObject("looked_on", LocalDate.class),
                Item.Outcome.valueOf(row.getString("outcome")),
                Optional.ofNullable(row.getObject("next_on", LocalDate.class)),
                row.getString("note"));
    }

    private static Row row(ResultSet row, Map<UUID, List<Item.Look>> looks) throws SQLException {
        var id = row.getObject("id", UUID.class);
        var wear = new Item.Wear(
                number(row, "by_day"), number(row, "by_night"), row.getString("schedule"), row.getString("build_up"));
        var data = new Item.Data(
                row.getString("kind"),
                Optional.ofNullable(row.getString("place")).map(Place::valueOf),
                Optional.ofNullable(row.getString("side")).map(Place.Side::valueOf),
                row.getObject("given_on", LocalDate.class),
                Optional.ofNullable(row.getObject("lent_until", LocalDate.class)),
                wear,
                number(row, "skin_every"),
                number(row, "growth_every"),
                Optional.ofNullable(row.getObject("back_on", LocalDate.class)),
                looks.getOrDefault(id, List.of()));
        return new Row(id, row.getLong("version"), data);
    }

    private static Optional<Integer> number(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getObject(column, Integer.class));
    }
}
