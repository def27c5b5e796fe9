package org.hearthway.clinic.internal;

import java.time.LocalDate;
import java.util.Map;
import org.hearthway.base.Bilingual;

/** The days that this clinic closed by itself, as they are known now. */
interface OwnDays {

    /**
     * The days with their names.
     *
     * @param edition counts what was said; the same count is the same days
     */
    record Known(long edition, Map<LocalDate, Bilingual> names) {

        static final Known NONE = new Known(0, Map.of());

        public Known {
            names = Map.copyOf(names);
        }
    }

    Known known();
}
