package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** An entry that had been folded into this child stands for itself again. */
public record MergeTakenBack(ChildId child, Viewer by, Instant at, ChildId folded) implements Change {}
