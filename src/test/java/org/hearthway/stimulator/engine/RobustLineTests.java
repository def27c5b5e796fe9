package org.hearthway.stimulator.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RobustLineTests {

    private static final LocalDate IN = LocalDate.of(2026, 3, 1);

    static List<Level> readings(BatteryUnit unit, int[] days, String... levels) {
        return IntStream.range(0, days.length)
                .mapToObj(i -> new Level(IN.plusDays(days[i]), new BigDecimal(levels[i]), unit))
                .toList();
    }

    /** Slope and level on the last day by SciPy 1.17.1, {@code scipy.stats.theilslopes}. */
    @Test
    void agreesWithAnIndependentProgram() {
        var falling = RobustLine.through(readings(
                BatteryUnit.PERCENT,
                new int[] {0, 61, 122, 183, 244, 305, 350, 390},
                "100",
                "100",
                "99",
                "99",
                "98",
                "95",
                "90",
                "84"));
        assertThat(falling.slope()).isCloseTo(-0.030679156908665108, within(1e-12));
        assertThat(falling.level()).isCloseTo(90.34227166276347, within(1e-9));
        var volts = RobustLine.through(
                readings(BatteryUnit.VOLT, new int[] {10, 40, 100, 170, 260}, "2.97", "2.96", "2.95", "2.92", "2.88"));
        assertThat(volts.slope()).isCloseTo(-0.0003466666666666711, within(1e-12));
        assertThat(volts.level()).isCloseTo(2.8837333333333324, within(1e-9));
    }

    /** By SciPy as above. Least squares (numpy.polyfit) gives 0.0032 a day, a tenth of it. */
    @Test
    void isHardlyBentByOneOddReading() {
        var line = RobustLine.through(readings(
                BatteryUnit.PERCENT, new int[] {0, 30, 75, 120, 170, 220}, "98", "97", "60", "94", "93", "91"));
        assertThat(line.slope()).isCloseTo(-0.031578947368421054, within(1e-12));
    }

    /** Sen's own definition, found another way: with the slope taken out, as many pairs rise as fall. */
    @Test
    void leavesAsManyPairsRisingAsFalling() {
        var days = new int[] {0, 20, 55, 90, 130, 177, 230};
        var levels = new double[] {99, 97, 98, 94, 95, 91, 86};
        var low = -1.0;
        var high = 1.0;
        for (var i = 0; i < 100; i++) {
            var middle = (low + high) / 2;
            if (risingLessFalling(days, levels, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        var line = RobustLine.through(readings(BatteryUnit.PERCENT, days, "99", "97", "98", "94", "95", "91", "86"));
        assertThat(line.slope()).isCloseTo(low, within(1e-9));
    }

    private static int risingLessFalling(int[] days, double[] levels, double slope) {
        var sum = 0;
        for (var i = 0; i < days.length; i++) {
            for (var j = 0; j < i; j++) {
                sum += (int) Math.signum(levels[i] - levels[j] - slope * (days[i] - days[j]));
            }
        }
        return sum;
    }

    /** The published null distribution of Kendall’s statistic: counted here over every order of so many readings. */
    @Test
    void countsTheChancesOfDiscordantPairsAsEveryOrderDoes() {
        for (var readings = 2; readings <= 7; readings++) {
            var counts = new double[readings * (readings - 1) / 2 + 1];
            var all = orders(readings);
            all.forEach(order -> counts[discordant(order)]++);
            var chances = RobustLine.discordant(readings);
            assertThat(chances).hasSize(counts.length);
            for (var i = 0; i < counts.length; i++) {
                assertThat(chances[i]).isCloseTo(counts[i] / all.size(), within(1e-12));
            }
        }
    }

    private static List<List<Integer>> orders(int readings) {
        var all = new ArrayList<List<Integer>>();
        if (readings == 0) {
            all.add(List.of());
            return all;
        }
        for (var shorter : orders(readings - 1)) {
            for (var at = 0; at <= shorter.size(); at++) {
                var longer = new ArrayList<>(shorter);
                longer.add(at, readings);
                all.add(longer);
            }
        }
        return all;
    }

    private static int discordant(List<Integer> order) {
        var count = 0;
        for (var i = 0; i < order.size(); i++) {
            for (var j = 0; j < i; j++) {
                count += order.get(j) > order.get(i) ? 1 : 0;
            }
        }
        return count;
    }

    /** Counted by enumeration in Python: the most discordant pairs whose chance is at most 5 per cent. */
    @ParameterizedTest
    @CsvSource({"4, 0", "5, 1", "6, 2", "7, 4", "8, 6"})
    void leavesFivePerCentBeyondEitherBound(int readings, int beyond) {
        assertThat(RobustLine.beyond(readings)).isEqualTo(beyond);
    }

    @Test
    void isBoundedByTheSteepestAndTheFlattestPairOfFour() {
        var line = RobustLine.through(
                readings(BatteryUnit.PERCENT, new int[] {0, 100, 200, 300}, "100", "99", "97", "90"));
        assertThat(line.steepest()).isCloseTo(-0.07, within(1e-12));
        assertThat(line.flattest()).isCloseTo(-0.01, within(1e-12));
    }

    @Test
    void isNotDrawnThroughThreeReadingsNorThroughTwoUnits() {
        var three = readings(BatteryUnit.PERCENT, new int[] {0, 50, 100}, "100", "99", "98");
        assertThatIllegalArgumentException().isThrownBy(() -> RobustLine.through(three));
        var mixed = new ArrayList<>(three);
        mixed.add(new Level(IN.plusDays(150), new BigDecimal("2.9"), BatteryUnit.VOLT));
        assertThatIllegalArgumentException().isThrownBy(() -> RobustLine.through(mixed));
    }

    @ParameterizedTest
    @CsvSource({"PERCENT, 100.1", "PERCENT, -1", "PERCENT, 50.55", "VOLT, 0.9", "VOLT, 5.1", "VOLT, 2.9555"})
    void refusesALevelThatNoDeviceShows(BatteryUnit unit, BigDecimal level) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Level(IN, level, unit));
    }
}
