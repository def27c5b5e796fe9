package org.hearthway.path;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.path.engine.Template.DeviceFate;

/**
 * What was said on a child's paths of a device in its body, held against the record of devices. A path never writes that
 * record: serial numbers, parts and days come from the device card, so a person enters them.
 */
public interface PathDevices {

    /**
     * Something that a path says and the record of devices does not say yet.
     *
     * @param decision version of the decision that said how the stage ended
     * @param outcome how it ended
     * @param day on which it happened
     */
    record Behind(long decision, Bilingual path, Bilingual stage, Bilingual outcome, DeviceFate fate, LocalDate day) {}

    /** All of it that stands today, the oldest first; for staff and the machine. */
    List<Behind> behind(Viewer viewer, ChildId child);

    /**
     * What the record of devices would have to say if the change were made to one of the child's paths, and does not
     * say; empty when the change says nothing of a device. Nothing is saved.
     */
    Optional<DeviceFate> ifSaid(Viewer viewer, ChildId child, String pathway, Plans.Change change);

    /** The kind of device that a path is about, while the record holds any part of one as in the body. */
    Optional<Device.Kind> held(Viewer viewer, ChildId child, String pathway);
}
