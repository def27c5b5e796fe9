package org.hearthway.visit.events;

import java.time.Instant;
import java.util.UUID;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The family confirmed a visit, or asked to move it. */
public record VisitAnswered(ChildId child, Viewer by, Instant at, UUID visit, boolean confirmed) implements Change {}
