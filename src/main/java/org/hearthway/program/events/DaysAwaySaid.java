package org.hearthway.program.events;

import java.time.Instant;
import java.time.LocalDate;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A family said that the child is away on these days. */
public record DaysAwaySaid(ChildId child, Viewer by, Instant at, LocalDate first, LocalDate last) implements Change {}
