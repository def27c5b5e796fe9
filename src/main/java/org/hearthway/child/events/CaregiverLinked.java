package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.AccountId;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A caregiver's reach to a child was said or changed. */
public record CaregiverLinked(ChildId child, Viewer by, Instant at, AccountId account) implements Change {}
