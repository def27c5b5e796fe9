package org.hearthway.medicine.internal;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** Medicines with their calendars and toxin sessions, version by version. Two lists become one list. */
@Component
class MedicineHoldings implements Holdings {

    private static final String CHILD = "child_id";
    private static final String MEDICINE = "medicine_id";
    private static final String SESSION = "session_id";

    @Override
    public List<Holding> all() {
        return List.of(
                Rows.of("medicine", "medicine", CHILD, MEDICINE),
                Rows.of("medicine-check", "medicine_check", CHILD, MEDICINE),
                Rows.of("taper", "taper", CHILD, MEDICINE),
                Rows.of("taper-step", "taper_step", CHILD, MEDICINE),
                Rows.of("taper-check", "taper_check", CHILD, MEDICINE),
                Rows.of("toxin-session", "toxin_session", CHILD, SESSION),
                Rows.of("toxin-injection", "toxin_injection", CHILD, SESSION));
    }
}
