package org.hearthway.medicine.events;

import java.time.Instant;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** A medicine was entered or written anew; a second person has not checked it yet. */
public record MedicineChanged(ChildId child, Viewer by, Instant at) implements Change {}
