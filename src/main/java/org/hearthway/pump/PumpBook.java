package org.hearthway.pump;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.pump.PumpEntry.KeyFigure;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Shown;

/**
 * The book of a child's pump: its figures, refills and changes of dose, each entered by one person and typed again by a
 * second who does not see the first one's numbers. It supports a trained person; the print-out and the label stand above
 * it.
 */
public interface PumpBook {

    /**
     * What a person enters.
     *
     * @param at when it was done, by the clinic's clock; not in the future and not before the pump came in
     * @param what see {@link PumpEntry.What}
     * @param corrects the entry in whose place it stands
     * @param emergency entered in an emergency: words about what is out of the usual are not asked for
     * @param unusual words about what is out of the usual, at most 500 characters
     */
    record NewEntry(
            LocalDateTime at,
            PumpEntry.What what,
            Optional<PumpEntry.Correction> corrects,
            boolean emergency,
            String unusual) {}

    /**
     * What the second person types.
     *
     * @param figures the key figures by which the entry is told
     * @param dosing the whole dosing, where one was set
     */
    record Again(Map<KeyFigure, Shown> figures, Optional<Dosing> dosing) {
        public Again {
            figures = Map.copyOf(figures);
        }
    }

    /** What the clinic keeps to. */
    ClinicRules rules();

    /**
     * A line of the book as a person may see it.
     *
     * @param entry the whole entry; empty while it waits for its second check and somebody else wrote it
     * @param superseded by the entry of this number
     */
    record Line(
            long number,
            Instant at,
            PumpEntry.Kind kind,
            AccountId by,
            Instant entered,
            boolean emergency,
            boolean waits,
            Optional<Long> superseded,
            Optional<PumpEntry> entry) {}

    /** All entries, the last entered first. */
    List<Line> history(Viewer viewer, ChildId child);

    /** The pump as it stands. */
    PumpOutlook outlook(Viewer viewer, ChildId child);

    /**
     * What an entry would come to, as far as it was written; nothing is saved.
     *
     * @throws org.hearthway.base.Invalid naming field, bound and way out; not for what is not there yet
     */
    PumpSums reckon(Viewer viewer, ChildId child, NewEntry entry);

    /**
     * Saves an entry, which then waits for its second check.
     *
     * @param seen number of the last entry that the person saw, 0 for none
     * @throws org.hearthway.base.Invalid naming field, bound and way out; also when something is out of the usual and
     *     nothing is said about it
     * @throws org.hearthway.base.Overtaken when somebody else entered something in between; never in an emergency
     */
    PumpEntry enter(Viewer viewer, ChildId child, NewEntry entry, long seen);

    /**
     * Counts an entry from now on.
     *
     * @throws org.hearthway.base.Invalid naming each figure that differs, never the first one's value; or when the person
     *     is the one who entered it, also under another account
     * @throws org.hearthway.base.Overtaken when somebody else checked it, or it was corrected, in between
     */
    void check(Viewer viewer, ChildId child, long number, Again again);

    /**
     * Says why the print-out and our forecast differ; the earlier date stands all the same.
     *
     * @param number the entry with the print-out
     * @param words 1 to 500 characters
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    void explain(Viewer viewer, ChildId child, long number, String words);
}
