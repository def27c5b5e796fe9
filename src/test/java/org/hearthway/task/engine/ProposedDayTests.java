package org.hearthway.task.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Two weeks, and eight weeks as near: common practice, no source. */
class ProposedDayTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    @Test
    void isTheLastDayOfAStageThatEndsSoon() {
        assertThat(ProposedDay.ofStage(TODAY, TODAY)).isEqualTo(TODAY);
        assertThat(ProposedDay.ofStage(TODAY.plusDays(56), TODAY)).isEqualTo("2026-05-07");
    }

    @Test
    void isTwoWeeksAheadWhereTheStageGivesNoDay() {
        assertThat(ProposedDay.ofStage(TODAY.plusDays(57), TODAY)).isEqualTo("2026-03-26");
        assertThat(ProposedDay.ofStage(TODAY.minusDays(1), TODAY)).isEqualTo("2026-03-26");
    }
}
