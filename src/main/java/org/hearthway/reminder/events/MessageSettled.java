package org.hearthway.reminder.events;

import java.time.Instant;
import java.util.UUID;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A message was sent, failed for good, or a call was noted; {@code state} is the name of its new state. */
public record MessageSettled(ChildId child, Viewer by, Instant at, UUID message, String state) implements Change {}
