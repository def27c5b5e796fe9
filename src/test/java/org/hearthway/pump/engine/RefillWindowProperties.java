package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds for every fill within the bounds. */
class RefillWindowProperties {

    private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);

    private static RefillWindow of(int filled, int alarm, int margin, int life) {
        var day = FIRST.plusDays(filled);
        return RefillWindow.of(
                day,
                Optional.empty(),
                Optional.of(day.plusDays(alarm)),
                Optional.empty(),
                new RefillRules(margin, 14, life, 10, 1),
                date -> date.getDayOfWeek().getValue() < 6);
    }

    /** Never before the fill: a margin that is longer than the fill lasts cannot be kept. */
    private static LocalDate latest(RefillWindow window) {
        var byAlarm = window.alarm().orElseThrow().minusDays(window.marginDays());
        var day = byAlarm.isBefore(window.lifeEnds()) ? byAlarm : window.lifeEnds();
        return day.isBefore(window.filled()) ? window.filled() : day;
    }

    @Property
    void neverLiesAfterTheAlarmLessTheMarginNorAfterTheLifeLimit(
            @ForAll @IntRange(max = 2000) int filled,
            @ForAll @IntRange(min = 1, max = 3650) int alarm,
            @ForAll @IntRange(min = 3, max = 14) int margin,
            @ForAll @IntRange(min = 1, max = 180) int life) {
        var window = of(filled, alarm, margin, life);
        assertThat(window.day()).isBeforeOrEqualTo(latest(window)).isAfterOrEqualTo(window.filled());
        assertThat(window.opens()).isBeforeOrEqualTo(window.day()).isAfterOrEqualTo(window.filled());
    }

    @Property
    void aLargerMarginNeverGivesALaterDay(
            @ForAll @IntRange(max = 2000) int filled,
            @ForAll @IntRange(min = 1, max = 3650) int alarm,
            @ForAll @IntRange(min = 3, max = 13) int margin,
            @ForAll @IntRange(min = 1, max = 180) int life) {
        assertThat(of(filled, alarm, margin + 1, life).day())
                .isBeforeOrEqualTo(of(filled, alarm, margin, life).day());
    }

    @Property
    void aLaterAlarmNeverGivesAnEarlierDay(
            @ForAll @IntRange(max = 2000) int filled,
            @ForAll @IntRange(min = 1, max = 3650) int alarm,
            @ForAll @IntRange(min = 3, max = 14) int margin,
            @ForAll @IntRange(min = 1, max = 180) int life) {
        assertThat(of(filled, alarm + 1, margin, life).day())
                .isAfterOrEqualTo(of(filled, alarm, margin, life).day());
    }
}
