package org.hearthway.task.events;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A task was given; {@code forFamily} is empty unless the whole family is asked. */
public record TaskGiven(ChildId child, Viewer by, Instant at, UUID task, Optional<Bilingual> forFamily)
        implements Change {}
