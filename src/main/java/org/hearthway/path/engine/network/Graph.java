package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hearthway.path.engine.network.Condition.Apart;
import org.hearthway.path.engine.network.Condition.Between;
import org.hearthway.path.engine.network.Condition.Gap;
import org.hearthway.path.engine.network.Condition.On;

/** The network with points as numbers, so that a change reaches its neighbours without a search. */
final class Graph {

    final List<Point> points;
    final List<Condition> conditions;
    final Span horizon;

    /** For each point the conditions with another point, by their place in the list. */
    final List<List<Integer>> touching;

    /** For each point the days it may lie on, as many sets as there are rules about it. */
    final List<List<Days>> days;

    /** The two points of each condition between two, by its place in the list. */
    private final int[] one;

    private final int[] other;

    /** The pairs that lie apart, by their place in the list of conditions. */
    final List<Integer> pairs = new ArrayList<>();

    private final Map<String, Integer> numbers = new HashMap<>();

    Graph(List<Point> points, List<Condition> conditions, Span horizon) {
        this.points = points;
        this.conditions = conditions;
        this.horizon = horizon;
        touching = new ArrayList<>();
        days = new ArrayList<>();
        one = new int[conditions.size()];
        other = new int[conditions.size()];
        for (var point : points) {
            if (numbers.put(point.id(), numbers.size()) != null) {
                throw new IllegalArgumentException("the point " + point.id() + " stands twice");
            }
            touching.add(new ArrayList<>());
            days.add(new ArrayList<>());
        }
        for (int at = 0; at < conditions.size(); at++) {
            enter(conditions.get(at), at);
        }
    }

    private void enter(Condition condition, int at) {
        if (condition instanceof Gap gap) {
            join(at, gap.from(), gap.to());
        } else if (condition instanceof Apart apart) {
            join(at, apart.one(), apart.other());
            pairs.add(at);
        } else if (condition instanceof On on) {
            days.get(number(on.point())).add(on.days());
        } else {
            number(((Between) condition).point());
        }
    }

    private void join(int at, String from, String to) {
        one[at] = number(from);
        other[at] = number(to);
        touching.get(one[at]).add(at);
        touching.get(other[at]).add(at);
    }

    /** The point that a gap counts from, or one of a pair. */
    int one(int condition) {
        return one[condition];
    }

    /** The point that a gap leads to, or the other of a pair. */
    int other(int condition) {
        return other[condition];
    }

    /** The point's place in the list. @throws IllegalArgumentException when there is no such point */
    int number(String point) {
        var number = numbers.get(point);
        if (number == null) {
            throw new IllegalArgumentException("no point " + point + " in the network");
        }
        return Objects.requireNonNull(number);
    }

    int size() {
        return points.size();
    }

    boolean allows(int point, LocalDate day) {
        return days.get(point).stream().allMatch(set -> set.allow(day));
    }

    /** The day itself if all rules allow it, else the next one that they do. */
    LocalDate onOrAfter(int point, LocalDate day) {
        var found = day;
        for (var next = step(point, found, true); !next.equals(found); next = step(point, found, true)) {
            found = next;
        }
        return found;
    }

    /** The day itself if all rules allow it, else the last one before that they do. */
    LocalDate onOrBefore(int point, LocalDate day) {
        var found = day;
        for (var next = step(point, found, false); !next.equals(found); next = step(point, found, false)) {
            found = next;
        }
        return found;
    }

    private LocalDate step(int point, LocalDate day, boolean onward) {
        var found = day;
        for (var set : days.get(point)) {
            found = onward ? set.onOrAfter(found) : set.onOrBefore(found);
        }
        return found;
    }
}
