package org.hearthway.stimulator.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** It was entered what kind of generator a child has: charged at home or not, how often, until when. */
public record GeneratorDescribed(ChildId child, Viewer by, Instant at) implements Change {}
