package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.AccountId;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Somebody outside the clinic helps a child, or for longer or less long than before. */
public record HelperLinked(ChildId child, Viewer by, Instant at, AccountId helper) implements Change {}
