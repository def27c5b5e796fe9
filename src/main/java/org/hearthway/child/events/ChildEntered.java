package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A child was entered at the clinic. */
public record ChildEntered(ChildId child, Viewer by, Instant at) implements Change {}
