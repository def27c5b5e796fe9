package org.hearthway.program.events;

import java.time.Instant;
import java.time.LocalDate;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A family took back what it had said of an exercise on a day. */
public record SessionTakenBack(ChildId child, Viewer by, Instant at, String exercise, LocalDate day)
        implements Change {}
