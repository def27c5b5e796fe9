package org.hearthway.paper.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A physician signed what must be done in an emergency. */
public record EmergencyPlanSigned(ChildId child, Viewer by, Instant at) implements Change {}
