package org.hearthway.visit;

import java.util.List;
import org.hearthway.base.Bilingual;

/**
 * A kind of visit, as data in {@code content/visits}.
 *
 * @param id identifier, such as {@code refill}
 * @param name in family words
 * @param minutes usual length
 * @param with the role that sees the child, in words
 * @param bring what to bring
 * @param critical whether a missed one is dangerous, as a refill is
 */
public record VisitKind(
        String id, Bilingual name, int minutes, Bilingual with, List<Bilingual> bring, boolean critical) {

    public VisitKind {
        bring = List.copyOf(bring);
    }
}
