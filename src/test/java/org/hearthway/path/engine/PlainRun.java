package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import org.hearthway.path.engine.network.Condition.Gap;
import org.hearthway.path.engine.network.Network;

/** Single-source shortest paths over a network's gaps as whole days, forth and back: the least that a plan costs. */
final class PlainRun {

    private final int points;
    private final int[][] edges;
    private final int[][] leaving;
    private final int[][] arriving;

    private PlainRun(int points, int[][] edges) {
        this.points = points;
        this.edges = edges;
        leaving = byPoint(0);
        arriving = byPoint(1);
    }

    private int[][] byPoint(int end) {
        var lists = new int[points][0];
        for (int edge = 0; edge < edges.length; edge++) {
            int point = edges[edge][end];
            lists[point] = Arrays.copyOf(lists[point], lists[point].length + 1);
            lists[point][lists[point].length - 1] = edge;
        }
        return lists;
    }

    /** A gap of at least so long is an edge back of minus that weight; one of at most so long an edge forth. */
    static PlainRun of(Network network) {
        var numbers = new HashMap<String, Integer>();
        network.points().forEach(point -> numbers.put(point.id(), numbers.size()));
        var edges = new ArrayList<int[]>();
        for (var condition : network.conditions()) {
            if (condition instanceof Gap gap) {
                int from = numbers.get(gap.from());
                int to = numbers.get(gap.to());
                gap.most().ifPresent(most -> edges.add(new int[] {from, to, days(most)}));
                gap.least().ifPresent(least -> edges.add(new int[] {to, from, -days(least)}));
            }
        }
        return new PlainRun(numbers.size(), edges.toArray(new int[0][]));
    }

    private static int days(Period period) {
        return (int) (LocalDate.EPOCH.plus(period).toEpochDay());
    }

    /** The sum of all days, so that nothing is left out. */
    long run(int begun) {
        return run(begun, leaving, 0, 1) - run(begun, arriving, 1, 0);
    }

    private long run(int begun, int[][] touching, int near, int far) {
        var distance = new int[points];
        Arrays.fill(distance, Integer.MAX_VALUE / 2);
        distance[0] = begun;
        var queue = new ArrayDeque<Integer>();
        var queued = new BitSet(points);
        queue.add(0);
        while (!queue.isEmpty()) {
            int point = queue.remove();
            queued.clear(point);
            for (int edge : touching[point]) {
                int next = edges[edge][far];
                int length = distance[edges[edge][near]] + edges[edge][2];
                if (length < distance[next]) {
                    distance[next] = length;
                    if (!queued.get(next)) {
                        queued.set(next);
                        queue.add(next);
                    }
                }
            }
        }
        long sum = 0;
        for (int d : distance) {
            sum += d;
        }
        return sum;
    }
}
