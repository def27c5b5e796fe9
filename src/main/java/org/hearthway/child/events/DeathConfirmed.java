package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A second person confirmed that a child died. */
public record DeathConfirmed(ChildId child, Viewer by, Instant at) implements Change {}
