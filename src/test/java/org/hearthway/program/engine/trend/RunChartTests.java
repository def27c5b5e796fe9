package org.hearthway.program.engine.trend;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hearthway.program.engine.trend.RunChart.Change;
import org.hearthway.program.engine.trend.RunChart.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunChartTests {

    private static final LocalDate DAY = LocalDate.of(2026, 2, 2);

    private static RunChart chart(int... numbers) {
        var points = new ArrayList<Point>();
        for (int i = 0; i < numbers.length; i++) {
            points.add(new Point(DAY.plusDays(i), numbers[i]));
        }
        return RunChart.of(points);
    }

    /**
     * Anhøj and Olesen 2014: round(log2 n + 3) and the 5 % quantile of a binomial with n - 1 throws; the limits for 24 points
     * (8 and 8) as the authors' own R package explains them, the others worked out by hand from the two formulas.
     */
    @ParameterizedTest
    @CsvSource({"10,6,2", "11,6,2", "12,7,3", "16,7,4", "20,7,6", "24,8,8", "30,8,10", "40,8,14"})
    void limitsAreThoseOfTheTwoFormulas(int useful, int longest, int fewest) {
        assertThat(RunChart.longestUsual(useful)).isEqualTo(longest);
        assertThat(RunChart.fewestUsual(useful)).isEqualTo(fewest);
    }

    /** The quantile once more, summed from Pascal's triangle. */
    @Property(tries = 60)
    void fewestCrossingsAreTheSmallestThatOneInTwentyStaysWithin(@ForAll @IntRange(min = 2, max = 60) int useful) {
        var row = new double[useful];
        row[0] = 1;
        for (int n = 1; n < useful; n++) {
            for (int k = n; k > 0; k--) {
                row[k] = (row[k] + row[k - 1]) / 2;
            }
            row[0] /= 2;
        }
        var sum = 0.0;
        var quantile = -1;
        while (sum < 0.05) {
            quantile++;
            sum += row[quantile];
        }
        assertThat(RunChart.fewestUsual(useful)).isEqualTo(quantile);
    }

    @Test
    void countsRunsAndCrossingsWithoutWhatLiesOnTheMedian() {
        var chart = chart(1, 1, 5, 3, 5, 1, 3, 1, 5, 5, 3);
        assertThat(chart.median()).isEqualByComparingTo("3");
        assertThat(chart.useful()).isEqualTo(8);
        assertThat(chart.longestRun()).isEqualTo(2);
        assertThat(chart.crossings()).isEqualTo(3);
        assertThat(chart.change()).isEqualTo(Change.TOO_FEW);
    }

    @Test
    void theMedianOfAnEvenCountLiesBetween() {
        assertThat(chart(1, 2, 3, 4).median()).isEqualByComparingTo("2.5");
        assertThat(chart().median()).isEqualByComparingTo("0");
    }

    @Test
    void aRowThatClimbsIsRisingAndItsMirrorFalling() {
        assertThat(chart(1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5, 5, 6, 6).change()).isEqualTo(Change.RISING);
        assertThat(chart(6, 6, 5, 5, 4, 4, 4, 3, 3, 2, 2, 2, 1, 1).change()).isEqualTo(Change.FALLING);
    }

    @Test
    void aRowThatSwingsWidelyIsNoChange() {
        assertThat(chart(0, 7, 1, 6, 2, 8, 5, 1, 0, 7, 7, 2, 1, 6, 0, 8).change())
                .isEqualTo(Change.NONE);
    }

    @Test
    void whatCameAndWentIsASignalWithoutADirection() {
        assertThat(chart(1, 1, 1, 1, 9, 9, 9, 9, 9, 9, 9, 9, 1, 1, 1, 1).change())
                .isEqualTo(Change.OTHER);
    }

    @Test
    void theSameNumberEveryDayIsNoChange() {
        assertThat(chart(3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3).change()).isEqualTo(Change.TOO_FEW);
        assertThat(chart(3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3).isSignal()).isFalse();
    }

    /** Chance alone signals seldom: both rules together in fewer than one row of ten, counted over two thousand rows. */
    @Example
    void chanceAloneSeldomSignals() {
        var random = new Random(20140911);
        var signals = 0;
        for (int row = 0; row < 2000; row++) {
            signals += chart(random.ints(24, 0, 1000).toArray()).isSignal() ? 1 : 0;
        }
        assertThat(signals).isBetween(20, 200);
    }

    private static int[] halves(int earlier, int later) {
        var row = new int[20];
        Arrays.fill(row, 0, earlier, 2);
        Arrays.fill(row, 10, 10 + later, 2);
        return row;
    }

    /**
     * Mostly 0, so that the median is 0 and nothing can lie below it. By hand, of 10 twos among 20 days: 8 or more of them in
     * the later ten in (45·45 + 10·10 + 1) of 184 756 ways, 1.2 %; 7 or more in 16 526, 8.9 % (Fisher's exact test).
     */
    @Test
    void numbersOnOneSideOfTheMedianAreComparedByTheirShareOfEachHalf() {
        var few = new int[30];
        Arrays.fill(few, 20, 30, 3);
        assertThat(chart(few).change())
                .as("ten sore days after twenty without pain")
                .isEqualTo(Change.RISING);
        assertThat(chart(halves(3, 8)).isOneSided())
                .as("eleven of twenty: the median is 2")
                .isTrue();
        var row = new int[40];
        for (int i = 0; i < row.length; i += 3) {
            row[i] = 2;
        }
        var mostlyNothing = chart(row);
        assertThat(mostlyNothing.isOneSided()).isTrue();
        assertThat(mostlyNothing.longestRun()).as("a run that is none").isEqualTo(14);
        assertThat(mostlyNothing.change()).isEqualTo(Change.NONE);
    }

    @ParameterizedTest
    @CsvSource({"1,9,RISING", "2,8,RISING", "3,7,NONE", "5,5,NONE", "7,3,NONE", "8,2,FALLING"})
    void aShareThatChanceGivesOnceInFortyIsASignal(int earlier, int later, Change change) {
        var row = Arrays.copyOf(halves(earlier, later), 21);
        // one more 0 in the middle makes 0 the median of 21
        System.arraycopy(row, 10, row, 11, 10);
        row[10] = 0;
        var chart = chart(row);
        assertThat(chart.isOneSided()).isTrue();
        assertThat(chart.offInLaterHalf()).isEqualTo(later);
        assertThat(chart.change()).isEqualTo(change);
    }

    /** Rows of a child that has no pain on two days of three, counted over two thousand: no more than 5 % signal. */
    @Example
    void aChildThatMostlyHasNoPainSeldomSignals() {
        var random = new Random(1935);
        var signals = 0;
        for (int row = 0; row < 2000; row++) {
            signals += chart(random.ints(40, 0, 3).map(i -> i == 2 ? 3 : 0).toArray())
                            .isSignal()
                    ? 1
                    : 0;
        }
        assertThat(signals).isLessThan(130);
    }

    @Property
    void aRowReadBackwardsHasTheSameRunsAndTheOppositeDirection(
            @ForAll @Size(max = 40) List<@IntRange(max = 10) Integer> numbers) {
        var there = chart(numbers.stream().mapToInt(i -> i).toArray());
        var turned = new ArrayList<>(numbers);
        Collections.reverse(turned);
        var back = chart(turned.stream().mapToInt(i -> i).toArray());
        assertThat(back.longestRun()).isEqualTo(there.longestRun());
        assertThat(back.crossings()).isEqualTo(there.crossings());
        assertThat(back.change())
                .isEqualTo(
                        switch (there.change()) {
                            case RISING -> Change.FALLING;
                            case FALLING -> Change.RISING;
                            default -> there.change();
                        });
    }

    /** What is rated two higher every day is the same row. */
    @Property
    void aConstantMoreChangesNothing(@ForAll @Size(max = 40) List<@IntRange(max = 8) Integer> numbers) {
        var row = numbers.stream().mapToInt(i -> i).toArray();
        assertThat(chart(Arrays.stream(row).map(i -> i + 2).toArray()).change())
                .isEqualTo(chart(row).change());
    }
}
