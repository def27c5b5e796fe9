package org.hearthway.program.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A family said when it has time for exercises, or the team did on its behalf. */
public record FamilyTimesSaved(ChildId child, Viewer by, Instant at, int version, boolean onBehalf) implements Change {}
