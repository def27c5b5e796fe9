package org.hearthway.program.engine.week;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hearthway.program.engine.week.Ask.Phase;
import org.jspecify.annotations.Nullable;

/**
 * The order of exercises within one time: phase by phase, and within a phase by what is fetched for them, so that as
 * little as can be is put away and fetched again. What needs nothing changes nothing.
 *
 * @param exercises in the order in which they are done
 * @param changes how often another thing is fetched than the one before
 */
public record SessionOrder(List<Ask> exercises, int changes) {

    public SessionOrder {
        exercises = List.copyOf(exercises);
    }

    /** A way through the phases: which thing lies there at its end, and how it came to that. */
    private record Way(@Nullable Way before, Phase phase, List<String> things, int changes) {
        private String last() {
            return things.get(things.size() - 1);
        }
    }

    /** The order with the fewest changes; among several the first by name. */
    public static SessionOrder of(Collection<Ask> asks) {
        var things = new TreeMap<Phase, TreeSet<String>>();
        asks.stream()
                .filter(ask -> !ask.equipment().isEmpty())
                .forEach(ask -> things.computeIfAbsent(ask.phase(), phase -> new TreeSet<>())
                        .add(ask.equipment()));
        List<Way> ways = List.of();
        for (var phase : things.entrySet()) {
            ways = on(ways, phase.getKey(), List.copyOf(phase.getValue()));
        }
        var best = ways.stream().min(Comparator.comparingInt(Way::changes)).orElse(null);
        return new SessionOrder(sorted(asks, best), best == null ? 0 : best.changes());
    }

    /** For each thing that may come last in the phase the best way there. */
    private static List<Way> on(List<Way> before, Phase phase, List<String> things) {
        var ways = new ArrayList<Way>();
        for (var last : things) {
            Way best = null;
            for (var way : before) {
                var joins = things.contains(way.last())
                        && (things.size() == 1 || !way.last().equals(last));
                var next = way(way, phase, things, joins ? way.last() : "", last);
                best = best == null || next.changes() < best.changes() ? next : best;
            }
            ways.add(best == null ? way(null, phase, things, "", last) : best);
        }
        return ways;
    }

    private static Way way(@Nullable Way before, Phase phase, List<String> things, String first, String last) {
        var order = new ArrayList<>(things);
        order.remove(last);
        if (order.remove(first)) {
            order.add(0, first);
        }
        order.add(last);
        var joined = before != null && before.last().equals(order.get(0));
        var changes = order.size() - 1 + (before == null ? 0 : before.changes() + (joined ? 0 : 1));
        return new Way(before, phase, List.copyOf(order), changes);
    }

    private static List<Ask> sorted(Collection<Ask> asks, @Nullable Way way) {
        var places = new TreeMap<Phase, List<String>>();
        for (var at = way; at != null; at = at.before()) {
            places.put(at.phase(), at.things());
        }
        return asks.stream()
                .sorted(Comparator.comparing(Ask::phase)
                        .thenComparingInt(ask -> place(places, ask))
                        .thenComparing(Ask::priority)
                        .thenComparing(Ask::exercise))
                .toList();
    }

    /** What needs nothing comes first in its phase. */
    private static int place(Map<Phase, List<String>> places, Ask ask) {
        return places.getOrDefault(ask.phase(), List.of()).indexOf(ask.equipment());
    }
}
