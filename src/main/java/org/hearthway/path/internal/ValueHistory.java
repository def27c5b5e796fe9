package org.hearthway.path.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.hearthway.path.ClinicValues.Own;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.ValuePlace;

/** All changes of one path's values, the oldest first, and what they add up to. */
record ValueHistory(List<Made> changes) {

    static final ValueHistory NONE = new ValueHistory(List.of());

    ValueHistory {
        changes = List.copyOf(changes);
    }

    /** One value of a change. */
    record Given(ValuePlace place, Amount before, Amount shipped, Optional<Amount> own) {}

    /** One change. */
    record Made(
            long number, List<Given> given, Optional<Long> undoes, String reason, Optional<AccountId> by, Instant at) {

        Made {
            given = List.copyOf(given);
        }
    }

    long version() {
        return changes.isEmpty() ? 0 : changes.get(changes.size() - 1).number();
    }

    Optional<Made> change(long number) {
        return changes.stream().filter(made -> made.number() == number).findFirst();
    }

    /** The same with one more. */
    ValueHistory and(Made made) {
        var all = new ArrayList<>(changes);
        all.add(made);
        return new ValueHistory(all);
    }

    /** As it was at a moment. */
    ValueHistory until(Instant moment) {
        return new ValueHistory(
                changes.stream().filter(made -> !made.at().isAfter(moment)).toList());
    }

    /** Those that count no more. What takes back can itself be taken back, so the newest speaks first. */
    Set<Long> undone() {
        var undone = new HashSet<Long>();
        for (int at = changes.size() - 1; at >= 0; at--) {
            var made = changes.get(at);
            if (!undone.contains(made.number())) {
                made.undoes().ifPresent(undone::add);
            }
        }
        return undone;
    }

    /** The clinic's own values, the oldest first. */
    Map<ValuePlace, Own> own() {
        var undone = undone();
        var own = new LinkedHashMap<ValuePlace, Own>();
        for (var made : changes) {
            if (!undone.contains(made.number())) {
                for (var given : made.given()) {
                    own.remove(given.place());
                    given.own()
                            .ifPresent(amount -> own.put(
                                    given.place(),
                                    new Own(
                                            amount,
                                            given.shipped(),
                                            made.number(),
                                            made.reason(),
                                            made.by(),
                                            made.at())));
                }
            }
        }
        return own;
    }

    /** Their amounts, the oldest first. */
    Map<ValuePlace, Amount> amounts() {
        var amounts = new LinkedHashMap<ValuePlace, Amount>();
        own().forEach((place, own) -> amounts.put(place, own.amount()));
        return amounts;
    }
}
