package org.hearthway.program.events;

import java.time.Instant;
import java.time.LocalDate;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A home program rests from a day on. */
public record ProgramPaused(ChildId child, Viewer by, Instant at, LocalDate from) implements Change {}
