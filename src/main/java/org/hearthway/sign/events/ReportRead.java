package org.hearthway.sign.events;

import java.time.Instant;
import java.util.UUID;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Somebody of the team read a family's report. */
public record ReportRead(ChildId child, Viewer by, Instant at, UUID key) implements Change {}
