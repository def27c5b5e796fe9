package org.hearthway.choosing.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A decision about the path was written down; what the family reads of it is told by the path that begins. */
public record PathDecided(ChildId child, Viewer by, Instant at) implements Change {}
