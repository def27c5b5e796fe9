package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.AccountId;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Somebody outside the clinic no longer helps a child. */
public record HelperEnded(ChildId child, Viewer by, Instant at, AccountId helper) implements Change {}
