package org.hearthway.choosing.engine;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What one criterion says about one child.
 *
 * @param criterion its identifier within the path
 * @param mark how it bears on the path
 * @param holds the case that holds; empty when a fact is missing
 * @param missing the facts that are missing, in the order of their identifiers; empty when a case holds
 * @param source of what it says
 */
public record Line(String criterion, Mark mark, Optional<Criterion.Case> holds, Set<String> missing, String source) {

    public Line {
        missing = java.util.Collections.unmodifiableSet(new TreeSet<>(missing));
        if ((mark == Mark.MISSING) != holds.isEmpty() || holds.isEmpty() == missing.isEmpty()) {
            throw new IllegalArgumentException("either a case holds or a fact is missing");
        }
    }
}
