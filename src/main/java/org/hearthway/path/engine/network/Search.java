package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hearthway.path.engine.network.Schedule.Placed;

/** Gives one point after another its day. A day is kept only when all points behind can still get theirs. */
final class Search {

    private final Graph graph;
    private final Bounds bounds;
    private final Ways ways;
    private final List<Span> hull;
    private final Map<String, Placed> placed = new LinkedHashMap<>();

    Search(Graph graph, Bounds bounds) {
        this.graph = graph;
        this.bounds = bounds;
        ways = new Ways(graph, bounds);
        hull = ways.hull();
    }

    Optional<Schedule> schedule() {
        if (hull.isEmpty() && graph.size() > 0) {
            return Optional.empty();
        }
        for (int point = 0; point < graph.size(); point++) {
            place(point);
        }
        return Optional.of(new Schedule(placed));
    }

    private void place(int point) {
        var wanted = wanted(graph.points.get(point));
        var aim = wanted.orElse(bounds.first(point));
        var pushed = pushed(point, aim);
        var days = new Nearest(graph, point, bounds.span(point), aim);
        var day = days.next();
        while (!isKept(point, day)) {
            day = days.next();
        }
        var why = day.equals(aim) ? Optional.<String>empty() : pushed;
        placed.put(graph.points.get(point).id(), new Placed(day, hull.get(point), wanted, why));
    }

    private Optional<LocalDate> wanted(Point point) {
        return point.aim()
                .map(aim -> Objects.requireNonNull(placed.get(aim.from())).day().plus(aim.usual()));
    }

    /** The rule that leaves the day aimed at outside of the bounds. */
    private Optional<String> pushed(int point, LocalDate aim) {
        int by = Bounds.NOTHING;
        if (aim.isBefore(bounds.first(point))) {
            by = bounds.firstBy(point);
        } else if (aim.isAfter(bounds.last(point))) {
            by = bounds.lastBy(point);
        }
        return by == Bounds.NOTHING
                ? Optional.empty()
                : Optional.of(graph.conditions.get(by).rule());
    }

    private boolean isKept(int point, LocalDate day) {
        int mark = bounds.mark();
        if (bounds.put(point, day) && ways.isAny()) {
            return true;
        }
        bounds.backTo(mark);
        return false;
    }
}
