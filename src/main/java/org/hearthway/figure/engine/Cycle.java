package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** One round of a moving picture: rest, out through the key poses, hold, back the same way, rest. */
final class Cycle {

    static final int SECONDS = 6;

    private static final double LEAVES = .08;
    private static final double ARRIVES = .42;
    private static final double TURNS = .62;
    private static final double BACK = .92;

    private Cycle() {}

    /** Which key pose stands at each of the key times. */
    static List<Integer> order(int keys) {
        var order = new ArrayList<Integer>();
        order.add(0);
        for (int i = 0; i < keys; i++) {
            order.add(i);
        }
        for (int i = keys - 1; i >= 0; i--) {
            order.add(i);
        }
        order.add(0);
        return order;
    }

    private static List<Double> moments(int keys) {
        var times = new ArrayList<Double>();
        times.add(0.0);
        for (int i = 0; i < keys; i++) {
            times.add(LEAVES + (ARRIVES - LEAVES) * i / (keys - 1));
        }
        for (int i = keys - 1; i >= 0; i--) {
            times.add(BACK - (BACK - TURNS) * i / (keys - 1));
        }
        times.add(1.0);
        return times;
    }

    static String times(int keys) {
        return moments(keys).stream().map(SvgPart::number).collect(Collectors.joining(";"));
    }

    /** Slow at the first and the last key pose, even between them. */
    static String splines(int keys) {
        var splines = new ArrayList<String>();
        var order = order(keys);
        for (int i = 1; i < order.size(); i++) {
            boolean leaves = isEnd(order.get(i - 1), keys);
            boolean arrives = isEnd(order.get(i), keys);
            splines.add(leaves && !arrives ? ".5 0 .8 .7" : !leaves && arrives ? ".2 .3 .5 1" : "0 0 1 1");
        }
        return String.join(";", splines);
    }

    private static boolean isEnd(int key, int keys) {
        return key == 0 || key == keys - 1;
    }
}
