package org.hearthway.sign.events;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A family reported a sign, or wrote a note when no sign is named; {@code urgency} is NOW, URGENT, HOURS or empty. */
public record SignReported(ChildId child, Viewer by, Instant at, UUID key, Optional<String> urgency)
        implements Change {}
