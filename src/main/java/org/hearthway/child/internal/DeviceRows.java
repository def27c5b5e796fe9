package org.hearthway.child.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.child.Devices;
import org.hearthway.child.events.DeviceRecorded;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class DeviceRows implements Devices {

    private static final String PUMPS = """
            select d.child, max(case when p.removed_on is null then p.implanted_on end) as came_in,
              max(p.removed_on) as came_out
            from child_device d join child_device_part p on p.device = d.id and p.version = d.version
            where p.part = 'RESERVOIR'
            """;

    private final JdbcClient jdbc;
    private final Gate gate;
    private final ApplicationEventPublisher events;
    private final ClinicSettings clinic;
    private final Clock clock;

    /** The gate itself asks this module, hence the lazy reference. */
    DeviceRows(JdbcClient jdbc, @Lazy Gate gate, ApplicationEventPublisher events, ClinicSettings clinic, Clock clock) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.events = events;
        this.clinic = clinic;
        this.clock = clock;
    }

    private record Row(UUID device, long version, Device.Kind kind, Device.Part part) {}

    @Override
    @Transactional(readOnly = true)
    public List<Device> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var byDevice = jdbc
                .sql("""
                        select d.id, d.version, p.kind, p.part, p.serial, p.implanted_on, p.removed_on
                        from child_device d join child_device_part p on p.device = d.id and p.version = d.version
                        where d.child = :child order by d.entered_at, d.id, p.place
                        """)
                .param("child", child.value())
                .query((row, n) -> new Row(
                        row.getObject("id", UUID.class),
                        row.getLong("version"),
                        Device.Kind.valueOf(row.getString("kind")),
                        new Device.Part(
                                Device.What.valueOf(row.getString("part")),
                                row.getString("serial"),
                                row.getObject("implanted_on", LocalDate.class),
                                Optional.ofNullable(row.getObject("removed_on", LocalDate.class)))))
                .stream()
                .collect(Collectors.groupingBy(Row::device, LinkedHashMap::new, Collectors.toList()));
        return byDevice.entrySet().stream()
                .map(DeviceRows::device)
                .sorted(Comparator.comparing(device -> !device.isInPlace()))
                .collect(Collectors.toList());
    }

    private static Device device(Map.Entry<UUID, List<Row>> rows) {
        var first = rows.getValue().get(0);
        return new Device(
                rows.getKey(),
                first.kind(),
                rows.getValue().stream().map(Row::part).collect(Collectors.toList()),
                first.version());
    }

    @Override
    public boolean anyInPlace(ChildId child) {
        return jdbc.sql("""
                        select count(*) from child_device d
                        join child_device_part p on p.device = d.id and p.version = d.version
                        where d.child = :child and p.removed_on is null
                        """).param("child", child.value()).query(Long.class).single() > 0;
    }

    @Override
    public Map<ChildId, PumpNow> pumps() {
        return jdbc.sql(PUMPS + "group by d.child").query((row, n) -> pump(row)).stream()
                .collect(Collectors.toUnmodifiableMap(Known::child, Known::pump));
    }

    @Override
    public Optional<PumpNow> pump(ChildId child) {
        return jdbc.sql(PUMPS + "and d.child = :child group by d.child")
                .param("child", child.value())
                .query((row, n) -> pump(row))
                .optional()
                .map(Known::pump);
    }

    private record Known(ChildId child, PumpNow pump) {}

    private static Known pump(ResultSet row) throws SQLException {
        var in = Optional.ofNullable(row.getObject("came_in", LocalDate.class));
        return new Known(
                new ChildId(row.getObject("child", UUID.class)),
                new PumpNow(in.isPresent(), in.orElse(row.getObject("came_out", LocalDate.class))));
    }

    @Override
    public Map<ChildId, List<Device.Part>> generators() {
        var all = new HashMap<ChildId, List<Device.Part>>();
        jdbc.sql("""
                        select d.child, p.serial, p.implanted_on
                        from child_device d join child_device_part p on p.device = d.id and p.version = d.version
                        where p.part = 'GENERATOR' and p.removed_on is null order by d.entered_at, d.id, p.place
                        """).query(row -> {
            all.computeIfAbsent(new ChildId(row.getObject("child", UUID.class)), child -> new ArrayList<>())
                    .add(new Device.Part(
                            Device.What.GENERATOR,
                            row.getString("serial"),
                            row.getObject("implanted_on", LocalDate.class),
                            Optional.empty()));
        });
        return all;
    }

    @Override
    @Transactional
    public UUID enter(Viewer viewer, ChildId child, Device.Kind kind, List<Device.Part> parts) {
        gate.require(viewer, Action.RECORD_DEVICE, child);
        DeviceRules.check(kind, parts, today());
        var id = UUID.randomUUID();
        jdbc.sql("insert into child_device (id, child, version, entered_at) values (:id, :child, 1, :at)")
                .param("id", id)
                .param("child", child.value())
                .param("at", now())
                .update();
        write(viewer, id, 1, kind, parts);
        events.publishEvent(new DeviceRecorded(child, viewer, clock.instant()));
        return id;
    }

    @Override
    @Transactional
    public void change(Viewer viewer, ChildId child, UUID device, List<Device.Part> parts, long seen) {
        gate.require(viewer, Action.RECORD_DEVICE, child);
        var kind = of(viewer, child).stream()
                .filter(known -> known.id().equals(device))
                .findFirst()
                .orElseThrow(NotAvailable::new)
                .kind();
        DeviceRules.check(kind, parts, today());
        var moved = jdbc.sql("update child_device set version = :next where id = :id and version = :seen")
                .param("next", seen + 1)
                .param("id", device)
                .param("seen", seen)
                .update();
        if (moved == 0) {
            throw new Overtaken();
        }
        write(viewer, device, seen + 1, kind, parts);
        events.publishEvent(new DeviceRecorded(child, viewer, clock.instant()));
    }

    private void write(Viewer viewer, UUID device, long version, Device.Kind kind, List<Device.Part> parts) {
        var at = now();
        for (var place = 0; place < parts.size(); place++) {
            var part = parts.get(place);
            jdbc.sql("""
                            insert into child_device_part (device, version, place, kind, part, serial, implanted_on,
                              removed_on, entered_by, entered_at)
                            values (:device, :version, :place, :kind, :part, :serial, :in, :out, :by, :at)
                            """)
                    .param("device", device)
                    .param("version", version)
                    .param("place", place)
                    .param("kind", kind.name())
                    .param("part", part.what().name())
                    .param("serial", part.serial().strip())
                    .param("in", part.implanted())
                    .param("out", part.removed().orElse(null))
                    .param("by", viewer.tag())
                    .param("at", at)
                    .update();
        }
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private OffsetDateTime now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }
}
