package org.hearthway.choosing.engine;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is known of a child on a day.
 *
 * @param answers the choices that hold, by fact; a fact that does not stand here is not known, and none stands here
 *     without a choice
 * @param years age in completed years
 */
public record Known(Map<String, Set<String>> answers, int years) {

    public Known {
        answers = answers.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, entry -> Set.copyOf(entry.getValue())));
        if (answers.values().stream().anyMatch(Set::isEmpty) || years < 0) {
            throw new IllegalArgumentException("a fact is known by a choice, and nobody is younger than 0");
        }
    }

    /** The choices that hold; empty when the fact is not known. */
    public Optional<Set<String>> answer(String fact) {
        return Optional.ofNullable(answers.get(fact));
    }
}
