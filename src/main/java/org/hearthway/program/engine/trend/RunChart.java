package org.hearthway.program.engine.trend;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Whether a row of numbers changed, or only went up and down. Run chart: the numbers are looked at as above or below
 * their median, those on it aside. A run that is longer, or crossings of the median that are fewer, than chance explains
 * are a signal: more than round(log2 n + 3) in a row, or fewer than the 5 % quantile of a binomial with n - 1 throws of a
 * coin. J. Anhøj and A. V. Olesen, Run charts revisited: a simulation study of run chart rules for detection of
 * non-random variation in health care processes, PLoS ONE 2014; 9(11): e113825. A chart in which nothing changed still
 * signals at times: it asks for a look and is no finding.
 *
 * <p>Where more than half of the numbers are the lowest of all (a child that mostly has no pain) or the highest, the median
 * is that number and every other lies on one side of it: runs and crossings say nothing. Then the numbers off the median
 * are counted in both halves, and a share that chance gives at most once in forty to either side is a signal (R. A.
 * Fisher's exact test, The Design of Experiments, 1935; the limit is the usual 5 % of both sides together).
 *
 * @param points in the order of their days
 * @param median of all of them
 * @param useful how many do not lie on it
 * @param longestRun most in a row on one side
 * @param longestUsual more than so many are a signal
 * @param crossings how often the row changes sides
 * @param fewestUsual fewer than so many are a signal
 * @param change what that says
 */
public record RunChart(
        List<Point> points,
        BigDecimal median,
        int useful,
        int longestRun,
        int longestUsual,
        int crossings,
        int fewestUsual,
        Change change) {

    /** With fewer than so many useful points nothing is said; common practice with run charts. */
    public static final int ENOUGH = 10;

    private static final int HALF = 2;

    public RunChart {
        points = List.copyOf(points);
    }

    /** A number of a day. */
    public record Point(LocalDate day, int number) {}

    /** What a row of numbers says. */
    public enum Change {
        /** Too few numbers off their median to say anything. */
        TOO_FEW,
        /** Nothing but the usual ups and downs. */
        NONE,
        /** A signal, and the later half is higher than the earlier. */
        RISING,
        /** A signal, and the later half is lower than the earlier. */
        FALLING,
        /** A signal, and no difference between the halves: it came and went. */
        OTHER
    }

    /** Looks at a row; the order in which the points are given does not matter. */
    public static RunChart of(Collection<Point> points) {
        var row = points.stream()
                .sorted(Comparator.comparing(Point::day).thenComparingInt(Point::number))
                .toList();
        var median = median(row);
        var sides = row.stream()
                .mapToInt(point -> BigDecimal.valueOf(point.number()).compareTo(median))
                .filter(side -> side != 0)
                .toArray();
        var longest = longest(sides);
        var crossings = crossings(sides);
        var usual = longestUsual(sides.length);
        var fewest = fewestUsual(sides.length);
        var change = sides.length < ENOUGH
                ? Change.TOO_FEW
                : longest == sides.length
                        ? share(row, median)
                        : longest > usual || crossings < fewest ? direction(row) : Change.NONE;
        return new RunChart(row, median, sides.length, longest, usual, crossings, fewest, change);
    }

    /** Whether every number off the median lies on one side of it, so that shares are compared instead of runs. */
    public boolean isOneSided() {
        return useful > 0 && longestRun == useful;
    }

    /** How many numbers of the later half lie off the median. */
    public int offInLaterHalf() {
        return off(laterHalf(points), median);
    }

    /** Whether more of it should be looked at. */
    public boolean isSignal() {
        return change == Change.RISING || change == Change.FALLING || change == Change.OTHER;
    }

    /** How much higher the mean of the later half is than that of the earlier, to a tenth; below 0 where it fell. */
    public BigDecimal rise() {
        var half = points.size() / HALF;
        return half == 0
                ? BigDecimal.ZERO
                : BigDecimal.valueOf((long) later(points) - earlier(points))
                        .divide(BigDecimal.valueOf(half), 1, RoundingMode.HALF_UP);
    }

    /** The longest run that is usual among so many useful points: log2 n + 3, rounded; 0 for none. */
    public static int longestUsual(int useful) {
        return useful == 0 ? 0 : (int) Math.round(Math.log(useful) / Math.log(2) + 3);
    }

    /** The fewest crossings that are usual among so many useful points: the 5 % quantile, counted exactly. */
    public static int fewestUsual(int useful) {
        if (useful == 0) {
            return 0;
        }
        var throwsOfACoin = useful - 1;
        var all = BigInteger.ONE.shiftLeft(throwsOfACoin);
        var ways = BigInteger.ONE;
        var sum = ways;
        var fewest = 0;
        // the smallest number of which chance gives at least one in twenty so few
        while (sum.multiply(BigInteger.valueOf(20)).compareTo(all) < 0) {
            ways = ways.multiply(BigInteger.valueOf(throwsOfACoin - fewest)).divide(BigInteger.valueOf(fewest + 1L));
            sum = sum.add(ways);
            fewest++;
        }
        return fewest;
    }

    private static BigDecimal median(List<Point> row) {
        if (row.isEmpty()) {
            return BigDecimal.ZERO;
        }
        var numbers = row.stream().mapToInt(Point::number).sorted().toArray();
        var sum = numbers[(numbers.length - 1) / HALF] + numbers[numbers.length / HALF];
        return BigDecimal.valueOf(sum).divide(BigDecimal.valueOf(HALF), 1, RoundingMode.UNNECESSARY);
    }

    private static int longest(int[] sides) {
        var longest = 0;
        var run = 0;
        for (int i = 0; i < sides.length; i++) {
            run = i > 0 && sides[i] == sides[i - 1] ? run + 1 : 1;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    private static int crossings(int[] sides) {
        return (int) IntStream.range(1, sides.length)
                .filter(i -> sides[i] != sides[i - 1])
                .count();
    }

    /** The means of both halves, the point in the middle aside. */
    private static Change direction(List<Point> row) {
        var earlier = earlier(row);
        var later = later(row);
        return later > earlier ? Change.RISING : later < earlier ? Change.FALLING : Change.OTHER;
    }

    private static Change share(List<Point> row, BigDecimal median) {
        var half = row.size() / HALF;
        var earlier = off(row.subList(0, half), median);
        var later = off(laterHalf(row), median);
        return isRare(Math.max(earlier, later), earlier + later, half) ? direction(row) : Change.NONE;
    }

    /** Whether chance puts so many of them, or more, into one given half at most once in forty. */
    private static boolean isRare(int inOne, int both, int half) {
        var ways = BigInteger.ZERO;
        for (var i = inOne; i <= Math.min(both, half); i++) {
            ways = ways.add(choose(both, i).multiply(choose(HALF * half - both, half - i)));
        }
        return ways.multiply(BigInteger.valueOf(40)).compareTo(choose(HALF * half, half)) <= 0;
    }

    private static BigInteger choose(int of, int taken) {
        var ways = BigInteger.ONE;
        if (taken < 0 || taken > of) {
            return BigInteger.ZERO;
        }
        for (int i = 1; i <= taken; i++) {
            ways = ways.multiply(BigInteger.valueOf(of - taken + i)).divide(BigInteger.valueOf(i));
        }
        return ways;
    }

    private static int off(List<Point> points, BigDecimal median) {
        return (int) points.stream()
                .filter(point -> BigDecimal.valueOf(point.number()).compareTo(median) != 0)
                .count();
    }

    private static int earlier(List<Point> row) {
        return sum(row.subList(0, row.size() / HALF));
    }

    private static int later(List<Point> row) {
        return sum(laterHalf(row));
    }

    private static List<Point> laterHalf(List<Point> row) {
        return row.subList(row.size() - row.size() / HALF, row.size());
    }

    private static int sum(List<Point> points) {
        return points.stream().mapToInt(Point::number).sum();
    }
}
