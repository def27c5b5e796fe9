package org.hearthway.pump.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A second person read the same strength and daily dose on the print-out. */
public record PumpSettingConfirmed(ChildId child, Viewer by, Instant at) implements Change {}
