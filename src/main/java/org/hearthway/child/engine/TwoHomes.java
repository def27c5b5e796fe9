package org.hearthway.child.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;

/** A week laid out for the homes in which a child sleeps. It is laid out only when at least two have nights entered. */
public record TwoHomes(Map<AccountId, Nights> nights) {

    private static final int TWO = 2;

    public TwoHomes {
        nights = nights.entrySet().stream()
                .filter(home -> home.getValue().isKnown())
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** Whether there are two homes to tell apart. */
    public boolean areKnown() {
        return nights.size() >= TWO;
    }

    /**
     * Where the child sleeps in the night that begins on this day: one home; none when nobody has that night; several
     * when what was entered does not agree. Empty while the homes are not known.
     */
    public List<AccountId> on(LocalDate day) {
        if (!areKnown()) {
            return List.of();
        }
        return nights.entrySet().stream()
                .filter(home -> home.getValue().holdsOn(day))
                .map(Map.Entry::getKey)
                .sorted(java.util.Comparator.comparing(AccountId::toString))
                .toList();
    }
}
