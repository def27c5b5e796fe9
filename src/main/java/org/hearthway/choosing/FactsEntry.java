package org.hearthway.choosing;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.hearthway.base.AccountId;

/**
 * The facts about a child as they stood from a moment on.
 *
 * @param version counted up per child, from 1
 * @param by who entered what made this version
 * @param at when
 * @param facts what stood then, by fact; what does not stand there was not known
 */
public record FactsEntry(long version, AccountId by, Instant at, Map<String, Answer.Data> facts) {

    public FactsEntry {
        facts = Map.copyOf(facts);
    }

    /** A fact that stands otherwise in the later of two versions. */
    public record Difference(String fact, Answer.Data before, Answer.Data after) {}

    /** What stands otherwise here than in another version, by the facts' identifiers. */
    public List<Difference> since(FactsEntry earlier) {
        return differences(earlier.facts(), facts);
    }

    /** The same of a version before which nothing had been entered. */
    public List<Difference> sinceNothing() {
        return differences(Map.of(), facts);
    }

    private static List<Difference> differences(Map<String, Answer.Data> before, Map<String, Answer.Data> after) {
        var names = new TreeSet<>(before.keySet());
        names.addAll(after.keySet());
        return names.stream()
                .map(fact -> new Difference(
                        fact, before.getOrDefault(fact, Answer.Data.NONE), after.getOrDefault(fact, Answer.Data.NONE)))
                .filter(difference -> !difference.before().equals(difference.after()))
                .toList();
    }
}
