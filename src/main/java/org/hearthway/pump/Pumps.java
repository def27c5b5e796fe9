package org.hearthway.pump;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.pump.engine.RefillBy;

/** Fills of a child's pump and the refill-by date they lead to. */
public interface Pumps {

    /** A recorded fill. Later records supersede earlier ones; none is altered. */
    record Fill(long number, RefillBy refillBy, String note, AccountId by, Instant at) {}

    /**
     * What a nurse types from the device print-out.
     *
     * @param filled day of the fill, not in the future and at most 2 years back
     * @param alarm low-reservoir alarm date, after the fill and at most 10 years ahead
     * @param marginDays days kept before the alarm, 3 to 14
     * @param note at most 500 characters
     */
    record FillData(LocalDate filled, LocalDate alarm, int marginDays, String note) {}

    /** What the clinic keeps to for every pump. */
    PumpRules rules();

    /**
     * The fill that counts; empty when none was recorded since the pump came in that is in now, or when every pump of
     * the child was taken out.
     */
    Optional<Fill> current(Viewer viewer, ChildId child);

    /** Since when a pump is in that no fill is recorded of; empty when a fill counts, or when no pump is on record. */
    Optional<LocalDate> unfilledSince(Viewer viewer, ChildId child);

    /** The day on which the last pump came out; empty while one is in, or when none is on record. */
    Optional<LocalDate> takenOutOn(Viewer viewer, ChildId child);

    /** All recorded fills, newest first; those of a pump that was taken out are among them. */
    List<Fill> history(Viewer viewer, ChildId child);

    /** The refill-by date of every child who has a fill that counts; for staff and the machine. */
    Map<ChildId, LocalDate> refillDates(Viewer viewer);

    /**
     * The refill-by date that a fill would give; nothing is saved.
     *
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    RefillBy check(FillData data);

    /**
     * Records a fill of the pump that is in: of the days since it came in, or, when it was taken out, until it did.
     *
     * @param seen number of the fill that the person saw as current, 0 for none
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else recorded one in between
     */
    Fill record(Viewer viewer, ChildId child, FillData data, long seen);
}
