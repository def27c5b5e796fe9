package org.hearthway.stimulator;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.stimulator.Reading.Again;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.engine.Window;

/**
 * Readings of brain stimulators and what follows from them. It programs nothing and doses nothing: it keeps what the
 * device showed, and tells when somebody should look again.
 */
public interface Stimulators {

    /**
     * What of a child's stimulator is on record.
     *
     * @param generators those in the body, in the order of the record
     * @param elsewhere readings of generators that are not in the body (any more), newest first
     * @param seen what a reading or a correction names as seen
     */
    record OnRecord(List<Generator> generators, List<Reading> elsewhere, long seen) {

        public OnRecord {
            generators = List.copyOf(generators);
            elsewhere = List.copyOf(elsewhere);
        }
    }

    /**
     * What a family may be told of one generator: dates from confirmed readings alone, and no setting.
     *
     * @param lastChecked the newest confirmed reading
     * @param nextReading the day by which the battery is read next
     * @param chargeEveryDays how often it is charged at home; empty for one that is not
     * @param from from when on a new generator is planned; empty while only its age says something
     * @param by by when it should be in
     */
    record Outlook(
            Optional<LocalDate> lastChecked,
            Optional<LocalDate> nextReading,
            Optional<Integer> chargeEveryDays,
            Optional<LocalDate> from,
            Optional<LocalDate> by) {}

    /**
     * When somebody should look at a generator, for lists of many children.
     *
     * @param serial of the generator
     * @param nextReading the day by which the battery is read next
     * @param lastRead the newest reading, confirmed or not
     * @param replaceFrom from when on a new one is planned; empty while only its age says something
     */
    record Due(
            String serial,
            Optional<LocalDate> nextReading,
            Optional<LocalDate> lastRead,
            Optional<LocalDate> replaceFrom) {}

    /** What the clinic keeps to. */
    StimulatorRules rules();

    /** Everything on record; for the team. */
    OnRecord record(Viewer viewer, ChildId child);

    /** Every revision of every reading, newest first, with those that were corrected or taken back; for the team. */
    List<Revision> revisions(Viewer viewer, ChildId child);

    /**
     * A reading as it stood once.
     *
     * @param counts whether this revision stands
     * @param withdrawn whether it took the reading back
     */
    record Revision(Reading reading, boolean counts, boolean withdrawn) {}

    /** What a family may be told, for each generator in the body. */
    List<Outlook> outlook(Viewer viewer, ChildId child);

    /** The days of every child with a generator in the body; for staff and the machine. */
    Map<ChildId, List<Due>> due(Viewer viewer);

    /**
     * The window that a generator would have with this reading; nothing is saved.
     *
     * @param instead number of the reading that it corrects, 0 for a new one
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     */
    Window check(Viewer viewer, ChildId child, ReadingData data, long instead);

    /**
     * Records a reading; it waits for its second check. One of an emergency is taken whatever came in between.
     *
     * @param seen see {@link OnRecord#seen}
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else recorded one in between
     */
    Reading enter(Viewer viewer, ChildId child, ReadingData data, long seen);

    /**
     * Corrects a reading, or takes it back when it never was; what it said before is kept, and it waits for its second
     * check anew.
     *
     * @param number which
     * @param data what it should say; empty to take it back
     * @param reason 3 to 500 characters
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else recorded or corrected one in between
     */
    void correct(Viewer viewer, ChildId child, long number, Optional<ReadingData> data, String reason, long seen);

    /**
     * Confirms a reading by the figures that a second person reads on the device or its print-out.
     *
     * @param revision that is confirmed
     * @throws org.hearthway.base.Invalid when a figure differs, or the person is the one who entered it, also under
     *     another account
     * @throws org.hearthway.base.Overtaken when it was corrected or confirmed in between
     */
    void confirm(Viewer viewer, ChildId child, Again again, long revision);

    /**
     * Says of what kind a generator is.
     *
     * @param serial of one in the body
     * @param about its version is the one that the person saw
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else entered it in between
     */
    void describe(Viewer viewer, ChildId child, String serial, Generator.About about);
}
