package org.hearthway.path.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A path with a clinic's own values in it, as far as they fit. A value whose place is gone, or which cannot stand beside
 * what the path says now, is left out and told.
 *
 * @param template the path with the values that fit
 * @param own those values
 * @param left the others
 */
public record Fitted(Template template, Map<ValuePlace, Amount> own, List<Left> left) {

    public Fitted {
        own = Map.copyOf(own);
        left = List.copyOf(left);
    }

    /** Why a value does not fit. */
    public enum Why {
        /** The path has no such stage, rule or visit any more. */
        GONE,
        /** It cannot stand beside the path's other values. */
        CONFLICT
    }

    /** A value that was left out. */
    public record Left(ValuePlace place, Amount amount, Why why) {}

    /**
     * Puts them in.
     *
     * @param shipped the path as its file says
     * @param own the clinic's values, the oldest first: of two that cannot stand together the older stands
     */
    public static Fitted of(Template shipped, Map<ValuePlace, Amount> own) {
        var places = PathValues.of(shipped);
        var left = new ArrayList<Left>();
        var there = new LinkedHashMap<ValuePlace, Amount>();
        own.forEach((place, amount) -> {
            var says = places.get(place);
            if (says != null && says.getClass().equals(amount.getClass())) {
                there.put(place, amount);
            } else {
                left.add(new Left(place, amount, Why.GONE));
            }
        });
        var fitting = fitting(shipped, there);
        there.keySet().removeAll(fitting.keySet());
        there.forEach((place, amount) -> left.add(new Left(place, amount, Why.CONFLICT)));
        return new Fitted(PathValues.with(shipped, fitting), fitting, left);
    }

    private static Map<ValuePlace, Amount> fitting(Template shipped, Map<ValuePlace, Amount> own) {
        if (fits(shipped, own)) {
            return Map.copyOf(own);
        }
        var fitting = new LinkedHashMap<ValuePlace, Amount>();
        // one value can make room for an older one, as a later latest does for a later usual gap
        for (boolean more = true; more; ) {
            more = false;
            for (var place : own.keySet()) {
                if (!fitting.containsKey(place)) {
                    fitting.put(place, Objects.requireNonNull(own.get(place)));
                    if (fits(shipped, fitting)) {
                        more = true;
                    } else {
                        fitting.remove(place);
                    }
                }
            }
        }
        return fitting;
    }

    private static boolean fits(Template shipped, Map<ValuePlace, Amount> own) {
        return own.isEmpty() || ValueRules.flaws(PathValues.with(shipped, own)).isEmpty();
    }
}
