package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.NoSuchElementException;

/** The days a point may lie on, the nearest to a wanted one first; of two as near, the later. */
final class Nearest {

    private final Graph graph;
    private final int point;
    private final Span span;
    private final LocalDate wanted;
    private LocalDate ahead;
    private LocalDate behind;

    Nearest(Graph graph, int point, Span span, LocalDate wanted) {
        this.graph = graph;
        this.point = point;
        this.span = span;
        this.wanted = wanted;
        ahead = graph.onOrAfter(point, wanted.isBefore(span.first()) ? span.first() : wanted);
        var before = wanted.minusDays(1);
        behind = graph.onOrBefore(point, before.isAfter(span.last()) ? span.last() : before);
    }

    /** The next one. @throws NoSuchElementException when the span has no more */
    LocalDate next() {
        boolean anyAhead = !ahead.isAfter(span.last());
        boolean anyBehind = !behind.isBefore(span.first());
        if (!anyAhead && !anyBehind) {
            throw new NoSuchElementException("no day left in the span");
        }
        if (anyAhead && (!anyBehind || !isFarther(ahead, behind))) {
            var day = ahead;
            ahead = graph.onOrAfter(point, day.plusDays(1));
            return day;
        }
        var day = behind;
        behind = graph.onOrBefore(point, day.minusDays(1));
        return day;
    }

    private boolean isFarther(LocalDate day, LocalDate than) {
        return distance(day) > distance(than);
    }

    private long distance(LocalDate day) {
        return Math.abs(ChronoUnit.DAYS.between(wanted, day));
    }
}
