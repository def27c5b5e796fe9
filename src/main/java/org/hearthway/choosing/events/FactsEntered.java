package org.hearthway.choosing.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Facts for the choice of a path were entered or taken back; the family reads nothing of it. */
public record FactsEntered(ChildId child, Viewer by, Instant at) implements Change {}
