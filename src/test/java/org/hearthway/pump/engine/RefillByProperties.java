package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds for every fill within the bounds. */
class RefillByProperties {

    private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);

    private static RefillBy of(int filled, int alarm, int margin, int life) {
        var day = FIRST.plusDays(filled);
        return RefillBy.of(day, day.plusDays(alarm), margin, life);
    }

    @Property
    void neverLiesAfterTheAlarmLessTheMarginNorAfterTheLifeLimit(
            @ForAll @IntRange(max = 2000) int filled,
            @ForAll @IntRange(min = 1, max = 3650) int alarm,
            @ForAll @IntRange(min = 3, max = 14) int margin,
            @ForAll @IntRange(min = 1, max = 180) int life) {
        var refillBy = of(filled, alarm, margin, life);
        assertThat(refillBy.day().plusDays(margin)).isBeforeOrEqualTo(refillBy.alarm());
        assertThat(refillBy.day()).isBeforeOrEqualTo(refillBy.filled().plusDays(life));
        assertThat(refillBy.day()).isIn(refillBy.byAlarm(), refillBy.byLife());
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
