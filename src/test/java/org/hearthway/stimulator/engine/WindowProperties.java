package org.hearthway.stimulator.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds for every course of readings. */
class WindowProperties {

    private static final LocalDate IMPLANTED = LocalDate.of(2024, 2, 29);
    private static final Window.Known PLAIN =
            new Window.Known(IMPLANTED, Charge.NEVER, Optional.empty(), Optional.empty(), Optional.of(10.0));
    private static final int FIRST_CHECK = 13;

    @Provide
    Arbitrary<List<Level>> courses() {
        return Arbitraries.integers()
                .between(0, 1000)
                .list()
                .ofMinSize(4)
                .ofMaxSize(12)
                .flatMap(levels -> Arbitraries.integers()
                        .between(1, 120)
                        .list()
                        .ofSize(levels.size())
                        .map(gaps -> course(levels, gaps)));
    }

    private static List<Level> course(List<Integer> tenths, List<Integer> gaps) {
        var day = IMPLANTED;
        var readings = new ArrayList<Level>();
        for (var i = 0; i < tenths.size(); i++) {
            day = day.plusDays(gaps.get(i));
            readings.add(new Level(day, BigDecimal.valueOf(tenths.get(i), 1), BatteryUnit.PERCENT));
        }
        return readings;
    }

    private static Window window(List<Level> readings) {
        return Window.of(PLAIN, readings, FIRST_CHECK);
    }

    private static LocalDate opens(List<Level> readings) {
        return window(readings).opens().orElseThrow().day();
    }

    @Property
    void aLowerNewestReadingNeverMovesTheWindowLater(
            @ForAll("courses") List<Level> readings, @ForAll @IntRange(min = 0, max = 1000) int less) {
        var newest = readings.get(readings.size() - 1);
        var level = newest.level().subtract(BigDecimal.valueOf(less, 1)).max(BigDecimal.ZERO);
        var lower = new ArrayList<>(readings);
        lower.set(readings.size() - 1, new Level(newest.day(), level, BatteryUnit.PERCENT));
        assertThat(opens(lower)).isBeforeOrEqualTo(opens(readings));
        var before = window(readings).closes();
        before.ifPresent(
                closes -> assertThat(window(lower).closes().orElseThrow().day()).isBeforeOrEqualTo(closes.day()));
    }

    @Property
    void theWindowNeverOpensAfterThirteenMonthsNorClosesBeforeItsFitOpens(@ForAll("courses") List<Level> readings) {
        var window = window(readings);
        assertThat(opens(readings)).isBeforeOrEqualTo(IMPLANTED.plusMonths(FIRST_CHECK));
        window.fit().flatMap(BatteryFit.Answer::fit).ifPresent(fit -> {
            assertThat(fit.earliest()).isBeforeOrEqualTo(fit.likely());
            assertThat(fit.steepest()).isLessThanOrEqualTo(fit.slope());
            assertThat(fit.earliest())
                    .isAfterOrEqualTo(readings.get(readings.size() - 1).day());
        });
    }

    /** A tenth of a point in five days, read exactly: whatever is added on the line changes nothing. */
    @Property
    void aReadingOnTheLineChangesNothing(
            @ForAll @IntRange(min = 4, max = 12) int readings, @ForAll @IntRange(min = 1, max = 6) int more) {
        var line = onALine(readings);
        var longer = onALine(readings + more);
        assertThat(fit(longer).likely()).isEqualTo(fit(line).likely()).isEqualTo(IMPLANTED.plusDays(4500));
        assertThat(fit(longer).earliest()).isEqualTo(fit(line).earliest());
    }

    private static BatteryFit fit(List<Level> readings) {
        return window(readings).fit().orElseThrow().fit().orElseThrow();
    }

    private static List<Level> onALine(int readings) {
        return IntStream.range(0, readings)
                .mapToObj(i -> new Level(
                        IMPLANTED.plusDays(30L * i), BigDecimal.valueOf(1000 - 6L * i, 1), BatteryUnit.PERCENT))
                .toList();
    }

    @Property
    void anEarlierEstimateNeverMovesTheWindowLater(
            @ForAll("courses") List<Level> readings, @ForAll @IntRange(min = 0, max = 4000) int days) {
        var estimated = new Window.Known(
                IMPLANTED, Charge.NEVER, Optional.empty(), Optional.of(IMPLANTED.plusDays(days)), Optional.of(10.0));
        assertThat(Window.of(estimated, readings, FIRST_CHECK)
                        .opens()
                        .orElseThrow()
                        .day())
                .isBeforeOrEqualTo(opens(readings))
                .isBeforeOrEqualTo(IMPLANTED.plusDays(days));
    }
}
