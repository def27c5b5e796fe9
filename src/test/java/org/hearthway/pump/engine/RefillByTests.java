package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefillByTests {

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
        var refillBy = RefillBy.of(filled, alarm, margin, 180);
        assertThat(refillBy.byAlarm()).isEqualTo(byAlarm);
        assertThat(refillBy.byLife()).isEqualTo(byLife);
        assertThat(refillBy.day()).isEqualTo(day);
        assertThat(refillBy.lifeDecides()).isEqualTo(lifeDecides);
    }

    @Test
    void refusesWhatIsOutOfBounds() {
        var filled = LocalDate.of(2026, 1, 15);
        var alarm = LocalDate.of(2026, 4, 6);
        assertThatThrownBy(() -> RefillBy.of(filled, alarm, 2, 180)).hasMessageContaining("3 to 14");
        assertThatThrownBy(() -> RefillBy.of(filled, alarm, 15, 180)).hasMessageContaining("3 to 14");
        assertThatThrownBy(() -> RefillBy.of(filled, alarm, 5, 0)).hasMessageContaining("1 to 180");
        assertThatThrownBy(() -> RefillBy.of(filled, alarm, 5, 181)).hasMessageContaining("1 to 180");
        assertThatThrownBy(() -> RefillBy.of(filled, filled, 5, 180)).hasMessageContaining("not after");
    }
}
