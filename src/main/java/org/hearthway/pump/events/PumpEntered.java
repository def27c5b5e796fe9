package org.hearthway.pump.events;

import java.time.Instant;
import java.time.LocalDate;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * Something was written into the book of a pump; a second person has not checked it yet.
 *
 * @param doseChanged whether it gives another dose than before
 * @param on the day on which it was done
 */
public record PumpEntered(ChildId child, Viewer by, Instant at, boolean doseChanged, LocalDate on) implements Change {}
