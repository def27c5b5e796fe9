package org.hearthway.child.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ages by the calendar and corrected; that scales correct under two years is common practice, no source. */
class AgeTests {

    private static final LocalDate BORN = LocalDate.of(2025, 1, 10);
    private static final Optional<Gestation> EARLY = Optional.of(new Gestation(28, 0));

    @Test
    void countsFromTheDueDayWhenBornEarly() {
        // 12 weeks early: due on April 4
        assertThat(EARLY.orElseThrow().dueDay(BORN)).isEqualTo(LocalDate.of(2025, 4, 4));
        var age = Age.on(BORN, EARLY, LocalDate.of(2026, 1, 10));
        assertThat(age.byCalendar()).isEqualTo(Period.ofYears(1));
        assertThat(age.corrected()).contains(Period.of(0, 9, 6));
        assertThat(age.forScale()).isEqualTo(Period.of(0, 9, 6));
    }

    @Test
    void isNothingBeforeTheDueDay() {
        assertThat(Age.on(BORN, EARLY, LocalDate.of(2025, 4, 3)).corrected()).contains(Period.ZERO);
        assertThat(Age.on(BORN, EARLY, LocalDate.of(2025, 4, 5)).corrected()).contains(Period.ofDays(1));
    }

    @Test
    void isNoLongerCorrectedFromTheSecondBirthday() {
        assertThat(Age.on(BORN, EARLY, LocalDate.of(2027, 1, 9)).corrected()).isPresent();
        var second = Age.on(BORN, EARLY, LocalDate.of(2027, 1, 10));
        assertThat(second.corrected()).isEmpty();
        assertThat(second.forScale()).isEqualTo(Period.ofYears(2));
    }

    @Test
    void isNotCorrectedWhenBornAtTermOrWhenNobodyRecordedIt() {
        var day = LocalDate.of(2025, 7, 10);
        assertThat(Age.on(BORN, Optional.of(new Gestation(37, 0)), day).corrected())
                .isEmpty();
        assertThat(Age.on(BORN, Optional.of(new Gestation(36, 6)), day).corrected())
                .isPresent();
        assertThat(Age.on(BORN, Optional.empty(), day).corrected()).isEmpty();
    }

    @Test
    void refusesADayBeforeTheBirth() {
        assertThatThrownBy(() -> Age.on(BORN, EARLY, BORN.minusDays(1))).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "19, 6, false",
        "20, 0, true",
        "44, 6, true",
        "45, 0, false",
        "60, 0, false",
        "30, 7, false",
        "30, -1, false"
    })
    void knowsWhatCanBe(int weeks, int days, boolean possible) {
        assertThat(Gestation.isPossible(weeks, days)).isEqualTo(possible);
        if (!possible) {
            assertThatThrownBy(() -> new Gestation(weeks, days)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
