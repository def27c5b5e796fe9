package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** What was entered about a child was corrected. */
public record ChildCorrected(ChildId child, Viewer by, Instant at) implements Change {}
