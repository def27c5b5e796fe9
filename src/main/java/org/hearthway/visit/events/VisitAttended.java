package org.hearthway.visit.events;

import java.time.Instant;
import java.util.UUID;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** It was noted whether the child came to a visit. */
public record VisitAttended(ChildId child, Viewer by, Instant at, UUID visit, boolean came) implements Change {}
