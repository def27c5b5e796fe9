package org.hearthway.stimulator.engine;

import java.util.List;
import java.util.Optional;

/**
 * Between which impedances a pair of contacts is usual, and by how much it may change from one reading to the next.
 * Common practice, no source; the device's manual decides.
 *
 * @param least ohms below which a short circuit is possible
 * @param most ohms above which a broken lead is possible
 * @param changePercent change against the reading before, in per cent of it, above which it is named
 */
public record ImpedanceRule(int least, int most, int changePercent) {

    private static final int WHOLE = 100;

    /** The impedance of a pair of contacts. */
    public record Pair(String name, int ohms) {}

    /** What is unusual about it. */
    public enum What {
        LOW,
        HIGH,
        CHANGED
    }

    /**
     * An unusual one.
     *
     * @param before the same pair at the reading before, if it was measured
     */
    public record Unusual(Pair pair, What what, Optional<Integer> before) {}

    /** Names what is unusual, in the order of the reading. */
    public List<Unusual> in(List<Pair> now, List<Pair> before) {
        return now.stream().flatMap(pair -> judge(pair, before).stream()).toList();
    }

    private Optional<Unusual> judge(Pair pair, List<Pair> before) {
        var earlier = before.stream()
                .filter(known -> known.name().equalsIgnoreCase(pair.name()))
                .map(Pair::ohms)
                .findFirst();
        if (pair.ohms() < least) {
            return Optional.of(new Unusual(pair, What.LOW, earlier));
        }
        if (pair.ohms() > most) {
            return Optional.of(new Unusual(pair, What.HIGH, earlier));
        }
        return earlier.filter(was -> Math.abs((long) pair.ohms() - was) * WHOLE > (long) was * changePercent)
                .map(was -> new Unusual(pair, What.CHANGED, earlier));
    }
}
