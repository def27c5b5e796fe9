package org.hearthway.path.engine.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Points and what has to hold between them.
 *
 * <p>A simple temporal network (Dechter, Meiri and Pearl, Temporal constraint networks, Artificial Intelligence
 * 1991;49:61-95) whose gaps are calendar periods and whose points may lie on chosen days only. All answers are exact
 * within the horizon: a network is called impossible only when no schedule keeps all of it.
 */
public final class Network {

    private final List<Point> points;
    private final List<Condition> conditions;
    private final Span horizon;

    /**
     * A network.
     *
     * @param points in the order in which they get their days
     * @param conditions about these points
     * @param horizon no point lies outside of it
     * @throws IllegalArgumentException when a condition names a point that is not there, on use
     */
    public Network(List<Point> points, List<Condition> conditions, Span horizon) {
        this.points = List.copyOf(points);
        this.conditions = List.copyOf(conditions);
        this.horizon = horizon;
    }

    /** The points, in order. */
    public List<Point> points() {
        return points;
    }

    /** The conditions, in order. */
    public List<Condition> conditions() {
        return conditions;
    }

    /** The same without the conditions of a rule. */
    public Network without(String rule) {
        return keeping(condition -> !condition.rule().equals(rule));
    }

    /** The same with one more condition. */
    public Network with(Condition condition) {
        var more = new ArrayList<>(conditions);
        more.add(condition);
        return new Network(points, more, horizon);
    }

    /** The same with another condition in the place of one, or with none there. */
    public Network replacing(Condition condition, Optional<Condition> other) {
        var changed = new ArrayList<>(conditions);
        int at = changed.indexOf(condition);
        changed.remove(at);
        other.ifPresent(instead -> changed.add(at, instead));
        return new Network(points, changed, horizon);
    }

    private Network keeping(Predicate<Condition> kept) {
        return new Network(points, conditions.stream().filter(kept).toList(), horizon);
    }

    /** The earliest and the latest day of every point in any schedule; empty when there is no schedule. */
    public Optional<Map<String, Span>> bounds() {
        var graph = new Graph(points, conditions, horizon);
        var bounds = Bounds.of(graph);
        if (bounds == null) {
            return Optional.empty();
        }
        var hull = new Ways(graph, bounds).hull();
        if (hull.isEmpty() && !points.isEmpty()) {
            return Optional.empty();
        }
        var spans = new LinkedHashMap<String, Span>();
        for (int point = 0; point < points.size(); point++) {
            spans.put(points.get(point).id(), hull.get(point));
        }
        return Optional.of(spans);
    }

    /** Whether some schedule keeps everything. */
    public boolean isPossible() {
        var graph = new Graph(points, conditions, horizon);
        var bounds = Bounds.of(graph);
        return bounds != null && new Ways(graph, bounds).isAny();
    }

    /**
     * A day for every point, as near as can be to the day aimed at: first for the first point, then for the next. Of
     * two days as near, the later; without an aim, the earliest. Empty when there is no schedule.
     */
    public Optional<Schedule> schedule() {
        var graph = new Graph(points, conditions, horizon);
        var bounds = Bounds.of(graph);
        return bounds == null ? Optional.empty() : new Search(graph, bounds).schedule();
    }

    /**
     * Rules that cannot all hold, while any all but one of them can: found by leaving out one after another. Empty when
     * there is a schedule.
     */
    public Set<String> conflict() {
        if (isPossible()) {
            return Set.of();
        }
        var kept = new LinkedHashSet<String>();
        conditions.forEach(condition -> kept.add(condition.rule()));
        for (var rule : List.copyOf(kept)) {
            kept.remove(rule);
            if (keeping(condition -> kept.contains(condition.rule())).isPossible()) {
                kept.add(rule);
            }
        }
        return kept;
    }
}
