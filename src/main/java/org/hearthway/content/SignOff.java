package org.hearthway.content;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.hearthway.base.Viewer;

/**
 * Which family content a clinic has accepted. In a real clinic a text that a named administrator has not accepted
 * stays hidden from families; the demo shows all of it and says so.
 */
public interface SignOff {

    /**
     * One piece of family content.
     *
     * @param kind the place of its kind, for instance {@code signs}
     * @param id identifier within the kind
     * @param version the version of its text; a new version asks for a new acceptance
     */
    record Item(String kind, String id, int version) {}

    /** Whether families may see this. */
    boolean isShown(Item item);

    /** Which of these families may see; one query however many. */
    Set<Item> shownAmong(List<Item> items);

    /** All content that families read, by kind and English title; for administrators. */
    List<FamilyText> all(Viewer viewer);

    /** Who accepted an item in a real clinic: the viewer's tag, and when. */
    record Acceptance(Item item, String by, Instant at) {}

    /** What was accepted so far; for administrators. */
    List<Acceptance> accepted(Viewer viewer);

    /** Accepts the items in the viewer's name. @throws org.hearthway.base.NotAvailable unless an administrator */
    void accept(Viewer viewer, List<Item> items);
}
