package org.hearthway.stimulator.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.stimulator.engine.RobustLineTests.readings;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.stimulator.engine.ImpedanceRule.Pair;
import org.hearthway.stimulator.engine.ImpedanceRule.Unusual;
import org.hearthway.stimulator.engine.ImpedanceRule.What;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sudden falls, impedances and charging; all bounds are common practice, no source. */
class WarningsTests {

    private static final DropRule DROP = new DropRule(3, BigDecimal.TEN, new BigDecimal("0.1"));
    private static final ImpedanceRule OHMS = new ImpedanceRule(250, 4000, 50);

    /** By hand: 2 points in 60 days before, so 2 are usual in the next 60; three times that are 6, and ten the least. */
    @ParameterizedTest
    @CsvSource({"96, false", "88, false", "87.1, false", "86, true", "50, true"})
    void namesAFallOfMoreThanThreeTimesTheUsualAndOfTenPoints(String newest, boolean sudden) {
        var run = readings(BatteryUnit.PERCENT, new int[] {0, 60, 120, 180}, "100", "98", "96", newest);
        assertThat(DROP.in(run).isPresent()).isEqualTo(sudden);
    }

    @Test
    void aSteepCourseIsNoSuddenFall() {
        var steep = readings(BatteryUnit.PERCENT, new int[] {0, 60, 120, 180}, "100", "85", "70", "56");
        assertThat(DROP.in(steep)).isEmpty();
    }

    @Test
    void aBatteryThatNeverFellBeforeFallsSuddenlyByTheLeastFall() {
        var flat = readings(BatteryUnit.VOLT, new int[] {0, 60, 120}, "2.98", "2.98", "2.88");
        var drop = DROP.in(flat).orElseThrow();
        assertThat(drop.fall()).isEqualByComparingTo("0.10");
        assertThat(drop.usual()).isZero();
    }

    @Test
    void withOneEarlierReadingNothingIsUsualYet() {
        assertThat(DROP.in(readings(BatteryUnit.PERCENT, new int[] {0, 14}, "100", "60")))
                .isEmpty();
    }

    @Test
    void namesImpedancesOutOfRangeAndThoseThatChanged() {
        var before = List.of(new Pair("C-1", 1000), new Pair("C-2", 1000), new Pair("C-3", 1000));
        var now = List.of(
                new Pair("C-0", 249),
                new Pair("c-1", 1500),
                new Pair("C-2", 1501),
                new Pair("C-3", 499),
                new Pair("C-4", 4001),
                new Pair("C-5", 4000));
        assertThat(OHMS.in(now, before))
                .containsExactly(
                        new Unusual(now.get(0), What.LOW, Optional.empty()),
                        new Unusual(now.get(2), What.CHANGED, Optional.of(1000)),
                        new Unusual(now.get(3), What.CHANGED, Optional.of(1000)),
                        new Unusual(now.get(4), What.HIGH, Optional.empty()));
    }

    @Test
    void aChargeIsLateFromTheDayAfterItIsDue() {
        var told = new Recharging(7, Optional.of(LocalDate.of(2026, 3, 1)));
        assertThat(told.next()).contains(LocalDate.of(2026, 3, 8));
        assertThat(told.lateOn(LocalDate.of(2026, 3, 8))).isZero();
        assertThat(told.lateOn(LocalDate.of(2026, 3, 10))).isEqualTo(2);
        assertThat(new Recharging(7, Optional.empty()).lateOn(LocalDate.of(2026, 3, 10)))
                .isZero();
    }

    /** A point that slips by two places is no strength of a stimulator. */
    @ParameterizedTest
    @CsvSource({
        "MILLIAMPERE, 2.5, true",
        "MILLIAMPERE, 250, false",
        "MILLIAMPERE, 0.025, false",
        "MILLIAMPERE, 25.5, true",
        "VOLT, 3.2, true",
        "VOLT, 320, false",
        "VOLT, 10.6, false",
        "VOLT, 0, false"
    })
    void knowsWhichStrengthsAreUsual(AmplitudeUnit unit, BigDecimal amplitude, boolean usual) {
        assertThat(unit.isUsual(amplitude)).isEqualTo(usual);
    }
}
