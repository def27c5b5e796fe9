package org.hearthway.program.events;

import java.time.Instant;
import java.time.LocalDate;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A family said that a child who was to be away from the first day on is there from the other day on. */
public record BackFromAway(ChildId child, Viewer by, Instant at, LocalDate first, LocalDate day) implements Change {}
