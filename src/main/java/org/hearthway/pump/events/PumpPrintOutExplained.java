package org.hearthway.pump.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Somebody said why the date of a print-out differs from ours. */
public record PumpPrintOutExplained(ChildId child, Viewer by, Instant at) implements Change {}
