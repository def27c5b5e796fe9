package org.hearthway.stimulator.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Reading.Check;
import org.hearthway.stimulator.Reading.Found;
import org.hearthway.stimulator.Reading.Other;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.Reading.Setting;
import org.hearthway.stimulator.Reading.Side;
import org.hearthway.stimulator.engine.AmplitudeUnit;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.ImpedanceRule.Pair;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Keeps what was recorded, corrected, taken back and confirmed. Revisions are part of every key, so of two at once one
 * wins.
 */
@Repository
class ReadingRows {

    /** One revision; taken back when it never was. */
    record Entry(Reading reading, boolean withdrawn) {}

    private record Key(UUID child, long revision) {}

    private final JdbcClient jdbc;

    ReadingRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All revisions of a child, oldest first. */
    List<Entry> of(ChildId child) {
        return read("= :child", child).getOrDefault(child, List.of());
    }

    /** All revisions of all children that are there, oldest first. */
    Map<ChildId, List<Entry>> all() {
        return read("in (select id from child_present)", new ChildId(new UUID(0, 0)));
    }

    private Map<ChildId, List<Entry>> read(String which, ChildId child) {
        var impedances = parts("stimulator_impedance", which, "place", child, ReadingRows::pair);
        var settings = parts("stimulator_setting", which, "side", child, ReadingRows::setting);
        var others = parts("stimulator_other", which, "place", child, ReadingRows::other);
        var all = new HashMap<ChildId, List<Entry>>();
        jdbc.sql("""
                        select r.*, c.checked_by, c.checked_at from stimulator_reading r left join stimulator_check c
                          on c.child = r.child and c.revision = r.revision
                        where r.child %s order by r.child, r.revision
                        """.formatted(which)).param("child", child.value()).query(row -> {
            var key = key(row);
            all.computeIfAbsent(new ChildId(key.child()), known -> new ArrayList<>())
                    .add(entry(
                            row,
                            impedances.getOrDefault(key, List.of()),
                            settings.getOrDefault(key, List.of()),
                            others.getOrDefault(key, List.of())));
        });
        return all;
    }

    private interface Part<T> {
        T read(ResultSet row) throws SQLException;
    }

    /** Table, condition and order are ours; nothing that a person typed. */
    private <T> Map<Key, List<T>> parts(String table, String which, String order, ChildId child, Part<T> part) {
        var all = new HashMap<Key, List<T>>();
        jdbc.sql("select * from %s where child %s order by child, revision, %s".formatted(table, which, order))
                .param("child", child.value())
                .query(row -> {
                    all.computeIfAbsent(key(row), known -> new ArrayList<>()).add(part.read(row));
                });
        return all;
    }

    private static Key key(ResultSet row) throws SQLException {
        return new Key(row.getObject("child", UUID.class), row.getLong("revision"));
    }

    private static Pair pair(ResultSet row) throws SQLException {
        return new Pair(row.getString("pair_name"), row.getInt("ohms"));
    }

    private static Setting setting(ResultSet row) throws SQLException {
        return new Setting(
                Side.valueOf(row.getString("side")),
                row.getString("contacts"),
                row.getBigDecimal("amplitude"),
                AmplitudeUnit.valueOf(row.getString("amplitude_unit")),
                row.getInt("pulse_width"),
                row.getBigDecimal("rate"));
    }

    private static Other other(ResultSet row) throws SQLException {
        return new Other(row.getString("shown_name"), row.getString("shown_value"), row.getString("shown_unit"));
    }

    /** The readings that stand, the one taken last first. */
    static List<Reading> standing(List<Entry> entries) {
        var last = new HashMap<Long, Entry>();
        entries.forEach(entry -> last.put(entry.reading().number(), entry));
        return last.values().stream()
                .filter(entry -> !entry.withdrawn())
                .map(Entry::reading)
                .sorted(Comparator.comparing((Reading reading) -> reading.data().taken())
                        .thenComparing(Reading::number)
                        .reversed())
                .toList();
    }

    /** The number of the newest revision, 0 for none. */
    static long newest(List<Entry> entries) {
        return entries.stream()
                .mapToLong(entry -> entry.reading().revision())
                .max()
                .orElse(0);
    }

    void add(ChildId child, Entry entry) {
        var reading = entry.reading();
        var data = reading.data();
        try {
            jdbc.sql("""
                            insert into stimulator_reading (child, revision, reading_number, generator, taken_at, battery,
                              battery_unit, replace_on, found_state, charge_every_days, last_charge, note, emergency,
                              unusual, reason, withdrawn, entered_by, entered_at)
                            values (:child, :revision, :number, :generator, :taken, :battery, :unit, :estimate, :found,
                              :every, :charge, :note, :emergency, :unusual, :reason, :withdrawn, :by, :at)
                            """)
                    .param("child", child.value())
                    .param("revision", reading.revision())
                    .param("number", reading.number())
                    .param("generator", data.generator())
                    .param("taken", data.taken())
                    .param("battery", data.level().orElse(null))
                    .param("unit", data.unit().name())
                    .param("estimate", data.estimate().orElse(null))
                    .param("found", data.found().name())
                    .param("every", data.chargeEveryDays().orElse(null))
                    .param("charge", data.lastCharge().orElse(null))
                    .param("note", data.note().strip())
                    .param("emergency", data.emergency())
                    .param(
                            "unusual",
                            String.join(",", reading.unusual().stream().sorted().toList()))
                    .param("reason", reading.reason())
                    .param("withdrawn", entry.withdrawn())
                    .param("by", reading.by().value())
                    .param("at", reading.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
        addParts(child, reading.revision(), data);
    }

    private void addParts(ChildId child, long revision, ReadingData data) {
        for (var place = 0; place < data.impedances().size(); place++) {
            var pair = data.impedances().get(place);
            jdbc.sql("insert into stimulator_impedance (child, revision, place, pair_name, ohms)"
                            + " values (?, ?, ?, ?, ?)")
                    .params(child.value(), revision, place, pair.name(), pair.ohms())
                    .update();
        }
        data.settings()
                .forEach(setting -> jdbc.sql("""
                                insert into stimulator_setting (child, revision, side, contacts, amplitude,
                                  amplitude_unit, pulse_width, rate) values (?, ?, ?, ?, ?, ?, ?, ?)
                                """)
                        .params(
                                child.value(),
                                revision,
                                setting.side().name(),
                                setting.contacts(),
                                setting.amplitude(),
                                setting.unit().name(),
                                setting.pulseWidth(),
                                setting.rate())
                        .update());
        for (var place = 0; place < data.others().size(); place++) {
            var other = data.others().get(place);
            jdbc.sql("insert into stimulator_other (child, revision, place, shown_name, shown_value, shown_unit)"
                            + " values (?, ?, ?, ?, ?, ?)")
                    .params(child.value(), revision, place, other.name(), other.value(), other.unit())
                    .update();
        }
    }

    void check(ChildId child, long revision, Check check) {
        try {
            jdbc.sql("insert into stimulator_check (child, revision, checked_by, checked_at) values (?, ?, ?, ?)")
                    .params(
                            child.value(),
                            revision,
                            check.by().value(),
                            check.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException confirmed) {
            throw new Overtaken();
        }
    }

    private static Entry entry(ResultSet row, List<Pair> impedances, List<Setting> settings, List<Other> others)
            throws SQLException {
        var data = new ReadingData(
                row.getString("generator"),
                row.getObject("taken_at", LocalDateTime.class),
                Optional.ofNullable(row.getBigDecimal("battery")),
                BatteryUnit.valueOf(row.getString("battery_unit")),
                Optional.ofNullable(row.getObject("replace_on", LocalDate.class)),
                Found.valueOf(row.getString("found_state")),
                impedances,
                settings,
                others,
                Optional.ofNullable(row.getObject("charge_every_days", Integer.class)),
                Optional.ofNullable(row.getObject("last_charge", LocalDate.class)),
                row.getString("note"),
                row.getBoolean("emergency"));
        var unusual = row.getString("unusual");
        var checkedBy = Optional.ofNullable(row.getObject("checked_by", UUID.class));
        var checkedAt = Optional.ofNullable(row.getObject("checked_at", OffsetDateTime.class));
        return new Entry(
                new Reading(
                        row.getLong("reading_number"),
                        row.getLong("revision"),
                        data,
                        row.getString("reason"),
                        unusual.isEmpty() ? Set.of() : Set.of(unusual.split(",")),
                        new AccountId(row.getObject("entered_by", UUID.class)),
                        row.getObject("entered_at", OffsetDateTime.class).toInstant(),
                        checkedBy.flatMap(by -> checkedAt.map(at -> new Check(new AccountId(by), at.toInstant())))),
                row.getBoolean("withdrawn"));
    }
}
