package org.hearthway.stimulator.engine;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A straight line through readings that a single odd one hardly bends: its slope is the median of the slopes of all
 * pairs (Theil H, 1950, Proc. K. Ned. Akad. Wet. 53). Its bounds are the two pair slopes between which the true slope
 * lies with at least 90 per cent (Sen PK, 1968, J. Am. Stat. Assoc. 63:1379-1389), counted exactly by the distribution
 * of the discordant pairs; ties make the interval wider than it need be, never narrower. Four readings are the fewest
 * for which there is such an interval.
 *
 * @param first day of the oldest reading
 * @param last day of the newest reading
 * @param readings how many, at least 4
 * @param level of the line on the last day
 * @param slope per day, negative when the battery falls
 * @param steepest the lower bound of the slope
 * @param flattest the upper bound of the slope
 */
public record RobustLine(
        LocalDate first, LocalDate last, int readings, double level, double slope, double steepest, double flattest) {

    /** Fewest readings. */
    public static final int FEWEST = 4;

    /** What may lie beyond either bound. */
    private static final double TAIL = 0.05;

    /**
     * Fits it.
     *
     * @param readings at least four, of one unit, in ascending order, no day twice
     */
    public static RobustLine through(List<Level> readings) {
        if (readings.size() < FEWEST) {
            throw new IllegalArgumentException("a line needs " + FEWEST + " readings");
        }
        var last = readings.get(readings.size() - 1).day();
        var slopes = slopes(readings);
        var slope = median(slopes);
        var levels = readings.stream()
                .mapToDouble(
                        reading -> reading.level().doubleValue() + slope * ChronoUnit.DAYS.between(reading.day(), last))
                .toArray();
        var beyond = beyond(readings.size());
        return new RobustLine(
                readings.get(0).day(),
                last,
                readings.size(),
                median(levels),
                slope,
                slopes[beyond],
                slopes[slopes.length - 1 - beyond]);
    }

    /** The slopes of all pairs in ascending order. */
    static double[] slopes(List<Level> readings) {
        return IntStream.range(0, readings.size())
                .boxed()
                .flatMapToDouble(later -> IntStream.range(0, later)
                        .mapToDouble(earlier -> slope(readings.get(earlier), readings.get(later))))
                .sorted()
                .toArray();
    }

    /** Per day, from one reading to a later one. */
    static double slope(Level earlier, Level later) {
        var days = ChronoUnit.DAYS.between(earlier.day(), later.day());
        if (days <= 0 || earlier.unit() != later.unit()) {
            throw new IllegalArgumentException("readings of one unit in ascending order, no day twice");
        }
        return later.level().subtract(earlier.level()).doubleValue() / days;
    }

    static double median(double... numbers) {
        var sorted = numbers.clone();
        Arrays.sort(sorted);
        var middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /** How many of the pair slopes may lie beyond a bound: the most discordant pairs whose chance stays in the tail. */
    static int beyond(int readings) {
        var chances = discordant(readings);
        var below = 0.0;
        var count = 0;
        while (below + chances[count] <= TAIL) {
            below += chances[count];
            count++;
        }
        return count - 1;
    }

    /** The chance of each number of discordant pairs where there is no slope at all, built up reading by reading. */
    static double[] discordant(int readings) {
        var chances = new double[] {1};
        for (var more = 2; more <= readings; more++) {
            var next = new double[more * (more - 1) / 2 + 1];
            for (var before = 0; before < chances.length; before++) {
                for (var added = 0; added < more; added++) {
                    next[before + added] += chances[before] / more;
                }
            }
            chances = next;
        }
        return chances;
    }
}
