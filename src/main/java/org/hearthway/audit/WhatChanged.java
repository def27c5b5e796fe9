package org.hearthway.audit;

import java.time.Instant;
import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** What changed in a child's plan, in the family's words; taken from every {@link org.hearthway.base.Change} as it happens. */
public interface WhatChanged {

    /** One change told to the family; its kind is that of {@link org.hearthway.base.Change#kind()}. */
    record Told(Instant at, String kind, Bilingual words) {}

    /** What was told after the instant, newest first. */
    List<Told> since(Viewer viewer, ChildId child, Instant after);
}
