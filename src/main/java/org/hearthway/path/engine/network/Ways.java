package org.hearthway.path.engine.network;

import java.util.ArrayList;
import java.util.List;
import org.hearthway.path.engine.network.Bounds.Turn;

/** Tries the two ways round of every pair that must lie apart; with no such pair there is a single way. */
final class Ways {

    private final Graph graph;
    private final Bounds bounds;

    Ways(Graph graph, Bounds bounds) {
        this.graph = graph;
        this.bounds = bounds;
    }

    /** Whether any schedule keeps to the bounds. */
    boolean isAny() {
        if (bounds.liesApartAtAnEnd()) {
            return true;
        }
        int pair = bounds.open();
        if (pair == Bounds.NOTHING) {
            return true;
        }
        for (var turn : Turn.values()) {
            int mark = bounds.mark();
            boolean found = bounds.turn(pair, turn) && isAny();
            bounds.backTo(mark);
            if (found) {
                return true;
            }
        }
        return false;
    }

    /** For each point its earliest and latest day in any schedule; empty when there is none. */
    List<Span> hull() {
        var hull = new ArrayList<Span>();
        widen(hull);
        return hull;
    }

    private void widen(List<Span> hull) {
        if (!hull.isEmpty() && holds(hull)) {
            return;
        }
        int pair = bounds.open();
        if (pair == Bounds.NOTHING) {
            add(hull);
            return;
        }
        for (var turn : Turn.values()) {
            int mark = bounds.mark();
            if (bounds.turn(pair, turn)) {
                widen(hull);
            }
            bounds.backTo(mark);
        }
    }

    /** Whether nothing on this way could widen what was found on another. */
    private boolean holds(List<Span> hull) {
        for (int point = 0; point < graph.size(); point++) {
            if (!hull.get(point).holds(bounds.span(point))) {
                return false;
            }
        }
        return true;
    }

    private void add(List<Span> hull) {
        for (int point = 0; point < graph.size(); point++) {
            if (hull.size() == point) {
                hull.add(bounds.span(point));
            } else {
                hull.set(point, hull.get(point).and(bounds.span(point)));
            }
        }
    }
}
