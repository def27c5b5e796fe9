package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The devices in a child's body were entered anew. */
public record DeviceRecorded(ChildId child, Viewer by, Instant at) implements Change {}
