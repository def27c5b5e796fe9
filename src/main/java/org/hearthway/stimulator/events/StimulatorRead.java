package org.hearthway.stimulator.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A reading of a stimulator was recorded, corrected or taken back; a second person has not confirmed it yet. */
public record StimulatorRead(ChildId child, Viewer by, Instant at) implements Change {}
