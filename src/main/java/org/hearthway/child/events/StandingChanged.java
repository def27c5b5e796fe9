package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * A child's status changed.
 *
 * @param asksTheFamily whether anything may be asked of the family from now on
 */
public record StandingChanged(ChildId child, Viewer by, Instant at, boolean asksTheFamily) implements Change {}
