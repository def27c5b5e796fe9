package org.hearthway.medicine.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.medicine.engine.TaperCalendar.Step;
import org.junit.jupiter.api.Test;

class TaperCalendarTests {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 10);

    private static Step step(int day, String dose) {
        return new Step(FIRST.plusDays(day), dose);
    }

    private static TaperCalendar stopping() {
        return new TaperCalendar(
                List.of(step(0, "10 mg"), step(7, "5 mg"), step(14, "2.5 mg")), Optional.of(FIRST.plusDays(21)));
    }

    @Test
    void aStepHoldsUntilTheNextAndNothingAfterTheStop() {
        assertThat(stopping().on(FIRST.minusDays(1))).isEmpty();
        assertThat(stopping().on(FIRST)).contains(step(0, "10 mg"));
        assertThat(stopping().on(FIRST.plusDays(6))).contains(step(0, "10 mg"));
        assertThat(stopping().on(FIRST.plusDays(7))).contains(step(7, "5 mg"));
        assertThat(stopping().on(FIRST.plusDays(20))).contains(step(14, "2.5 mg"));
        assertThat(stopping().on(FIRST.plusDays(21))).isEmpty();
    }

    @Test
    void theLastDoseStaysWhenNoStopIsSaid() {
        var staying = new TaperCalendar(List.of(step(0, "10 mg"), step(7, "5 mg")), Optional.empty());
        assertThat(staying.on(FIRST.plusYears(2))).contains(step(7, "5 mg"));
        assertThat(staying.changeDays()).containsExactly(FIRST, FIRST.plusDays(7));
    }

    @Test
    void theStopIsADayOfChangeToo() {
        assertThat(stopping().changeDays())
                .containsExactly(FIRST, FIRST.plusDays(7), FIRST.plusDays(14), FIRST.plusDays(21));
    }

    @Test
    void refusesDaysThatDoNotAscendAndAStopBeforeTheEnd() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TaperCalendar(List.of(step(7, "5 mg"), step(0, "10 mg")), Optional.empty()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TaperCalendar(List.of(step(0, "5 mg"), step(0, "10 mg")), Optional.empty()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TaperCalendar(List.of(step(7, "5 mg")), Optional.of(FIRST.plusDays(7))));
        assertThatIllegalArgumentException().isThrownBy(() -> new TaperCalendar(List.of(), Optional.empty()));
    }

    @Test
    void tellsWhichRowsOfASecondCopyDiffer() {
        var another = new TaperCalendar(
                List.of(step(0, "10 mg"), step(7, "5.0 mg"), step(15, "2.5 mg")), Optional.of(FIRST.plusDays(21)));
        assertThat(stopping().differing(another)).containsExactly(1, 2);
        assertThat(stopping().differing(stopping())).isEmpty();
    }
}
