package org.hearthway.equipment.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The days are sums of what the clinician entered; there is no outside rule to check them by. */
class DaysTests {

    private static final LocalDate FROM = LocalDate.of(2026, 2, 24);

    @Test
    void theFirstCastIsPutOnWhenTheSeriesBegins() {
        assertThat(new CastDays(FROM, 7, Optional.empty()).next(List.of())).isEqualTo(FROM);
    }

    @Test
    void theNextChangeIsCountedFromTheCastPutOnLast() {
        var days = new CastDays(FROM, 7, Optional.empty());
        assertThat(days.next(List.of(FROM.plusDays(9), FROM))).isEqualTo(LocalDate.of(2026, 3, 12));
    }

    @Test
    void noChangeIsPlannedBehindTheDayOnWhichTheLastComesOff() {
        var off = LocalDate.of(2026, 3, 10);
        var days = new CastDays(FROM, 7, Optional.of(off));
        assertThat(days.next(List.of(FROM, FROM.plusDays(7)))).isEqualTo(off);
        assertThat(days.isLast(off)).isTrue();
        assertThat(days.isLast(days.next(List.of(FROM)))).isFalse();
    }

    @Test
    void theNextLookIsWhatWasNamedAtTheLastOneElseTheUsualInterval() {
        var days = new CheckDays(FROM, 28);
        assertThat(days.next(List.of())).isEqualTo(LocalDate.of(2026, 3, 24));
        var look = new CheckDays.Look(LocalDate.of(2026, 3, 1), Optional.empty());
        assertThat(days.next(List.of(look))).isEqualTo(LocalDate.of(2026, 3, 29));
        var sooner = new CheckDays.Look(LocalDate.of(2026, 3, 5), Optional.of(LocalDate.of(2026, 3, 9)));
        assertThat(days.next(List.of(sooner, look))).isEqualTo(LocalDate.of(2026, 3, 9));
    }

    @Test
    void refuseAnIntervalOfNothing() {
        assertThatThrownBy(() -> new CastDays(FROM, 0, Optional.empty())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CheckDays(FROM, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
