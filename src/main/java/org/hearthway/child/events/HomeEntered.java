package org.hearthway.child.events;

import java.time.Instant;
import org.hearthway.base.AccountId;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** What is known of a caregiver of a child was entered or corrected. */
public record HomeEntered(ChildId child, Viewer by, Instant at, AccountId caregiver) implements Change {}
