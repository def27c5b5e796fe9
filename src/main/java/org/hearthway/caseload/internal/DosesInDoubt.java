package org.hearthway.caseload.internal;

import java.util.List;
import java.util.stream.Stream;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Facts.Unconfirmed;
import org.hearthway.caseload.engine.Facts.Unconfirmed.What;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Tapers;
import org.hearthway.pump.Pumps;
import org.hearthway.stimulator.Stimulators;
import org.springframework.stereotype.Component;

/**
 * What of a child waits for its second check: medicines, calendars that still hold, entries of the
 * book of the pump, readings of
 * the stimulator.
 */
@Component
class DosesInDoubt {

    private static final String PUMP = "entry";

    private final Medicines medicines;
    private final Tapers tapers;
    private final Pumps pumps;
    private final Stimulators stimulators;

    DosesInDoubt(Medicines medicines, Tapers tapers, Pumps pumps, Stimulators stimulators) {
        this.medicines = medicines;
        this.tapers = tapers;
        this.pumps = pumps;
        this.stimulators = stimulators;
    }

    List<Unconfirmed> of(Viewer viewer, ChildId child) {
        var lines = medicines.current(viewer, child).stream()
                .filter(line -> line.check().isEmpty())
                .map(line -> new Unconfirmed(What.MEDICINE, line.id().toString(), line.version(), line.at()));
        var calendars = tapers.current(viewer, child).values().stream()
                .filter(taper -> taper.check().isEmpty() && taper.holds())
                .map(taper -> new Unconfirmed(What.CALENDAR, taper.medicine().toString(), taper.number(), taper.at()));
        var entries = pumps.waiting(viewer, child).stream()
                .map(entry -> new Unconfirmed(What.PUMP, PUMP, entry.number(), entry.since()));
        var record = stimulators.record(viewer, child);
        var readings = Stream.concat(
                        record.generators().stream().flatMap(generator -> generator.readings().stream()),
                        record.elsewhere().stream())
                .filter(reading -> reading.check().isEmpty())
                .map(reading -> new Unconfirmed(
                        What.STIMULATOR, String.valueOf(reading.number()), reading.revision(), reading.at()));
        return Stream.of(lines, calendars, entries, readings)
                .flatMap(all -> all)
                .toList();
    }
}
