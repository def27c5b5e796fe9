package org.hearthway.child;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The devices in each child's body. */
public interface Devices {

    /** All devices of a child, those in place first; for anyone who may see the family's pages of it. */
    List<Device> of(Viewer viewer, ChildId child);

    /** Whether any part of any device is in this child's body; tells nothing else and asks nobody. */
    boolean anyInPlace(ChildId child);

    /**
     * What the record says of a child's pump, whatever of its catheter stayed.
     *
     * @param isIn whether one is in the body
     * @param since the day on which the one that is in came in, the newest of several; else the day the last came out
     */
    record PumpNow(boolean isIn, LocalDate since) {}

    /**
     * The pump of every child with a recorded one. A child that is not there may have one all the same: nobody said that
     * it has none. Tells nothing else and asks nobody.
     */
    Map<ChildId, PumpNow> pumps();

    /** The same of one child; empty when no pump of it is recorded. */
    Optional<PumpNow> pump(ChildId child);

    /**
     * The stimulators' generators that are in each child's body, in the order of the record. Tells nothing else and asks
     * nobody.
     */
    Map<ChildId, List<Device.Part>> generators();

    /**
     * Enters a device.
     *
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     */
    UUID enter(Viewer viewer, ChildId child, Device.Kind kind, List<Device.Part> parts);

    /**
     * Enters its parts anew: a new generator, a removed catheter. Earlier versions stay.
     *
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else saved in between
     */
    void change(Viewer viewer, ChildId child, UUID device, List<Device.Part> parts, long seen);
}
