package org.hearthway.pump.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.child.Devices;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.PumpEntry;
import org.springframework.stereotype.Component;

/** Opens books: of a child's entries only those count that are about the pump that is in. */
@Component
class Books {

    private final EntryRows rows;
    private final Devices devices;
    private final ClinicSettings clinic;

    Books(EntryRows rows, Devices devices, ClinicSettings clinic) {
        this.rows = rows;
        this.devices = devices;
        this.clinic = clinic;
    }

    /** The book about the pump that is in; nothing in it when the last one came out. */
    Ledger open(ChildId child) {
        return open(rows.of(child), devices.pump(child));
    }

    /** Where no pump is on record the book itself says that there is one. */
    Ledger open(List<PumpEntry> all, Optional<PumpNow> pump) {
        var about = all.stream()
                .filter(entry -> pump.map(now -> now.isIn() && !day(entry).isBefore(now.since()))
                        .orElse(true))
                .toList();
        return new Ledger(about, clinic.zone());
    }

    LocalDate day(PumpEntry entry) {
        return entry.at().atZone(clinic.zone()).toLocalDate();
    }
}
