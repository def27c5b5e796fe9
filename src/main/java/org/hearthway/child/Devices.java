package org.hearthway.child;

import java.util.List;
import java.util.Set;
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
     * The children whose every recorded pump was taken out, whatever of its catheter stayed. A child without a recorded
     * pump is not among them: nobody said that it has none. Tells nothing else and asks nobody.
     */
    Set<ChildId> pumpTakenOut();

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
