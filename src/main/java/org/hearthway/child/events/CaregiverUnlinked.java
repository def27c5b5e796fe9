package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.AccountId;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A caregiver no longer cares for a child. */
public record CaregiverUnlinked(ChildId child, Viewer by, Instant at, AccountId account) implements Change {}
