package org.hearthway.pump;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** What the rest of the clinic may rely on about a child's pump. */
public interface Pumps {

    /**
     * The next refill; empty when none was recorded since the pump came in that is in now, or when every pump of the
     * child was taken out.
     */
    Optional<Refill> refill(Viewer viewer, ChildId child);

    /** The same of every child; for staff and the machine. */
    Map<ChildId, Refill> refills(Viewer viewer);

    /** Since when a pump is in that no refill is recorded of; empty when one is, or when no pump is on record. */
    Optional<LocalDate> unfilledSince(Viewer viewer, ChildId child);

    /** The day on which the last pump came out; empty while one is in, or when none is on record. */
    Optional<LocalDate> takenOutOn(Viewer viewer, ChildId child);

    /**
     * How the pump that is in is set, as it was entered last.
     *
     * @param setting strength and dosing; empty while the last one waits for its second check
     * @param on since when
     */
    record Running(Optional<PumpEntry.Setting> setting, LocalDate on) {}

    /** How the pump that is in is set; empty when nothing was entered of it. */
    Optional<Running> running(Viewer viewer, ChildId child);

    /**
     * An entry that waits for its second check.
     *
     * @param number of the entry
     * @param refill whether it is a refill
     */
    record Waiting(long number, boolean refill, AccountId by, Instant since) {}

    /** What waits for its second check, the oldest first. */
    List<Waiting> waiting(Viewer viewer, ChildId child);

    /**
     * What somebody at the clinic has to look into.
     *
     * @param kind what it is
     * @param entry of the book it stands in; 0 for the pump itself
     * @param day since when, or the day it is about
     */
    record Concern(Kind kind, long entry, LocalDate day) {

        /** What it is. */
        public enum Kind {
            /** Print-out and forecast differ, and nobody has explained it. */
            PRINT_OUT,
            /** More or less was left at the last refill than expected. */
            RESIDUAL,
            /** A new pump is to be planned. */
            REPLACEMENT
        }
    }

    /** What somebody at the clinic has to look into, as things stand. */
    List<Concern> concerns(Viewer viewer, ChildId child);
}
