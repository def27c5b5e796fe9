package org.hearthway.equipment.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Casts;
import org.hearthway.equipment.Kind;
import org.hearthway.equipment.events.CastRecorded;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Series of casts as the team entered them. */
@Service
class StoredCasts implements Casts {

    private final CastRows rows;
    private final KindFiles kinds;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    StoredCasts(
            CastRows rows,
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
    public Optional<Kind> kind() {
        return kinds.cast();
    }

    @Override
    @Transactional(readOnly = true)
    public List<CastSeries> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return rows.of(child);
    }

    @Override
    @Transactional
    public UUID enter(Viewer viewer, ChildId child, CastSeries.Data data) {
        gate.require(viewer, Action.RECORD_EQUIPMENT, child);
        var id = UUID.randomUUID();
        write(viewer, child, id, data, 1);
        return id;
    }

    @Override
    @Transactional
    public void change(Viewer viewer, ChildId child, UUID series, CastSeries.Data data, long seen) {
        gate.require(viewer, Action.RECORD_EQUIPMENT, child);
        var known = rows.of(child).stream()
                .filter(row -> row.id().equals(series))
                .findFirst()
                .orElseThrow(NotAvailable::new);
        if (known.version() != seen) {
            throw new Overtaken();
        }
        write(viewer, child, series, data, seen + 1);
    }

    private void write(Viewer viewer, ChildId child, UUID id, CastSeries.Data data, long version) {
        CastRules.check(data, today());
        rows.add(child, id, version, data, viewer, now());
        events.publishEvent(new CastRecorded(child, viewer, clock.instant(), told(data)));
    }

    private Bilingual told(CastSeries.Data data) {
        return words.both(data.ended().isPresent() ? "equipment.told.cast-over" : "equipment.told.cast");
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private OffsetDateTime now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }
}
