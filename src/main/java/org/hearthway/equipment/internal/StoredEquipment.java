package org.hearthway.equipment.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.equipment.Equipment;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Kind;
import org.hearthway.equipment.events.EquipmentRecorded;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Splints and equipment as the team entered them. */
@Service
class StoredEquipment implements Equipment {

    private final ItemRows rows;
    private final KindFiles kinds;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    StoredEquipment(
            ItemRows rows,
            KindFiles kinds,
            ClinicSettings clinic,
            Gate gate,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.kinds = kinds;
        this.clinic = clinic;
        this.gate = gate;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public List<Kind> kinds() {
        return kinds.wornAndUsed();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Item> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var rows = this.rows.of(child);
        if (rows.isEmpty()) {
            return List.of();
        }
        Map<String, Kind> known =
                kinds.wornAndUsed(rows.stream().map(row -> row.data().kind()).collect(Collectors.toSet())).stream()
                        .collect(Collectors.toMap(Kind::id, Function.identity()));
        return rows.stream()
                .map(row -> new Item(row.id(), kind(known, row.data().kind()), row.data(), row.version()))
                .sorted(Comparator.comparing(item -> !item.isInUse()))
                .toList();
    }

    /** A kind that the content has since dropped keeps its things, plainly named. */
    private Kind kind(Map<String, Kind> known, String id) {
        return Optional.ofNullable(known.get(id)).orElseGet(() -> kinds.dropped(id, words.both("equipment.plain")));
    }

    @Override
    @Transactional
    public UUID enter(Viewer viewer, ChildId child, Item.Data data) {
        gate.require(viewer, Action.RECORD_EQUIPMENT, child);
        var id = UUID.randomUUID();
        write(viewer, child, id, data, 1);
        return id;
    }

    @Override
    @Transactional
    public void change(Viewer viewer, ChildId child, UUID item, Item.Data data, long seen) {
        gate.require(viewer, Action.RECORD_EQUIPMENT, child);
        var known = rows.of(child).stream()
                .filter(row -> row.id().equals(item))
                .findFirst()
                .orElseThrow(NotAvailable::new);
        if (known.version() != seen) {
            throw new Overtaken();
        }
        write(viewer, child, item, data, seen + 1);
    }

    private void write(Viewer viewer, ChildId child, UUID id, Item.Data data, long version) {
        var known = kinds.wornAndUsed(Set.of(data.kind()));
        ItemRules.check(data, known, today());
        rows.add(child, id, version, data, viewer, now());
        var told = data.back().isPresent() ? "equipment.told.back" : "equipment.told.item";
        var words = this.words.both(told, known.get(0).name());
        events.publishEvent(new EquipmentRecorded(child, viewer, clock.instant(), words));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private OffsetDateTime now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }
}
