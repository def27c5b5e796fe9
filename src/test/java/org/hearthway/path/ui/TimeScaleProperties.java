package org.hearthway.path.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Where stones and days lie on the line. */
class TimeScaleProperties {

    private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);
    private static final double WIDTH = 1000;
    private static final double GAP = 40;

    private static TimeScale scale(List<Integer> days) {
        return new TimeScale(days.stream().sorted().map(FIRST::plusDays).toList(), 10, WIDTH, GAP);
    }

    @Property
    void stonesNeverTouchAndFillTheLine(@ForAll @Size(min = 2, max = 20) List<@IntRange(max = 4000) Integer> days) {
        var scale = scale(days);
        for (int i = 1; i < days.size(); i++) {
            assertThat(scale.ofStone(i) - scale.ofStone(i - 1)).isGreaterThanOrEqualTo(GAP - 1e-6);
        }
        var sameDay = days.stream().distinct().count() == 1;
        if (!sameDay) {
            assertThat(scale.ofStone(days.size() - 1)).isCloseTo(10 + WIDTH, within(1e-6));
        }
    }

    @Property
    void aLaterDayNeverLiesBeforeAnEarlierOne(
            @ForAll @Size(min = 1, max = 20) List<@IntRange(max = 4000) Integer> days,
            @ForAll @IntRange(min = -100, max = 4100) int one,
            @ForAll @IntRange(max = 500) int more) {
        var scale = scale(days);
        assertThat(scale.of(FIRST.plusDays(one + more))).isGreaterThanOrEqualTo(scale.of(FIRST.plusDays(one)));
    }
}
