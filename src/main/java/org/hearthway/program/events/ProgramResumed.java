package org.hearthway.program.events;

import java.time.Instant;
import java.time.LocalDate;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A home program that rested goes on with that day. */
public record ProgramResumed(ChildId child, Viewer by, Instant at, LocalDate first) implements Change {}
