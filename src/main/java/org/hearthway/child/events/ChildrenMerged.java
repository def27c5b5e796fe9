package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Another entry turned out to be this child and was folded into it. */
public record ChildrenMerged(ChildId child, Viewer by, Instant at, ChildId folded) implements Change {}
