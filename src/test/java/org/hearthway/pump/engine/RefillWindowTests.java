package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefillWindowTests {

    /** Reference table ITB-W3, the columns refill, alarm date, margin, alarm - margin, +180 d, refill-by (computed by script). */
    @ParameterizedTest
    @CsvSource({
        "2026-01-15, 2026-04-06, 5, 2026-04-01, 2026-07-14, 2026-04-01, false",
        "2026-01-15, 2028-03-25, 5, 2028-03-20, 2026-07-14, 2026-07-14, true",
        "2026-03-03, 2026-06-23, 5, 2026-06-18, 2026-08-30, 2026-06-18, false",
        "2026-03-03, 2026-06-11, 5, 2026-06-06, 2026-08-30, 2026-06-06, false",
        "2026-02-27, 2026-07-29, 3, 2026-07-26, 2026-08-26, 2026-07-26, false"
    })
    void isTheEarlierOfAlarmLessMarginAndLifeInTheReservoir(
            LocalDate filled,
            LocalDate alarm,
            int margin,
            LocalDate byAlarm,
            LocalDate byLife,
            LocalDate day,
            boolean lifeDecides) {
        var window = of(filled, Optional.empty(), Optional.of(alarm), margin);
        assertThat(window.alarm().orElseThrow().minusDays(margin)).isEqualTo(byAlarm);
        assertThat(window.lifeEnds()).isEqualTo(byLife);
        assertThat(window.day()).isEqualTo(day);
        assertThat(window.lifeDecides()).isEqualTo(lifeDecides);
    }

    private static RefillWindow of(
            LocalDate filled, Optional<LocalDate> ours, Optional<LocalDate> printed, int margin) {
        return RefillWindow.of(
                filled, ours, printed, Optional.empty(), RefillRules.usual().withMargin(margin), open -> true);
    }

    /** Rule P7: of two alarm dates the earlier stands, and they are told when more than a day apart. */
    @ParameterizedTest
    @CsvSource({"0, 0, false", "1, 0, false", "-1, -1, false", "2, 0, true", "-2, -2, true"})
    void ofTwoAlarmDatesTheEarlierStands(int later, int stands, boolean flagged) {
        var ours = LocalDate.of(2026, 4, 6);
        var window = of(LocalDate.of(2026, 1, 15), Optional.of(ours), Optional.of(ours.plusDays(later)), 5);
        assertThat(window.alarm()).contains(ours.plusDays(stands));
        assertThat(window.printOut().orElseThrow().flagged()).isEqualTo(flagged);
    }

    @Test
    void aLastDayOfTheDrugItselfMakesItEarlierAndAClosedDayToo() {
        var filled = LocalDate.of(2026, 1, 15);
        var window = RefillWindow.of(
                filled,
                Optional.of(LocalDate.of(2026, 6, 1)),
                Optional.empty(),
                Optional.of(LocalDate.of(2026, 3, 1)),
                RefillRules.usual(),
                day -> day.getDayOfWeek().getValue() < 6);
        // March 1, 2026 is a Sunday
        assertThat(window.day()).isEqualTo(LocalDate.of(2026, 2, 27));
        assertThat(window.decides()).isEqualTo(RefillForecast.Limit.BEYOND_USE);
    }
}
