package org.hearthway.visit;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.content.Provenance;

/**
 * A kind of visit, as data in {@code content/visits}.
 *
 * @param id identifier, such as {@code refill}
 * @param name in family words
 * @param minutes usual length
 * @param with the role that sees the child, in words
 * @param bring what to bring
 * @param expect what happens at the visit, in family words; may be empty
 * @param critical whether a missed one is dangerous, as a refill is
 * @param weekdays days on which it is done; empty when it is done on every open day
 * @param provenance where the words come from and who has read them
 */
public record VisitKind(
        String id,
        Bilingual name,
        int minutes,
        Bilingual with,
        List<Bilingual> bring,
        List<Bilingual> expect,
        boolean critical,
        Set<DayOfWeek> weekdays,
        Provenance provenance) {

    public VisitKind {
        bring = List.copyOf(bring);
        expect = List.copyOf(expect);
        weekdays = Set.copyOf(weekdays);
    }
}
