package org.hearthway.program.events;

import java.time.Instant;
import java.time.LocalDate;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A family took back that it had moved a session. */
public record SessionMoveTakenBack(ChildId child, Viewer by, Instant at, String exercise, LocalDate from, LocalDate to)
        implements Change {}
