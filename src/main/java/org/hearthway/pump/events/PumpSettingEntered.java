package org.hearthway.pump.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Strength and daily dose were copied from the device print-out; a second person has not confirmed them yet. */
public record PumpSettingEntered(ChildId child, Viewer by, Instant at) implements Change {}
