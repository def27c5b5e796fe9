package org.hearthway.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.desk.DeskSamples.CHILD;
import static org.hearthway.desk.DeskSamples.TODAY;
import static org.hearthway.desk.DeskSamples.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.desk.Composer.Gap;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.Answer;
import org.hearthway.visit.Visit.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapsTests {

    private static final LocalDate BY = LocalDate.of(2026, 3, 24);

    private static List<Gap> refill(Visit... visits) {
        return new Gaps(TODAY, 60, "refill", 7)
                .of(CHILD, Optional.empty(), Optional.of(BY), List.of(visits))
                .toList();
    }

    private static Visit refillOn(LocalDate day, State state) {
        return visit("r", "refill", day.atTime(9, 0), Optional.empty(), Answer.NONE, state);
    }

    @Test
    void aRefillWithoutAVisitIsToBookInItsWindow() {
        assertThat(refill()).singleElement().satisfies(gap -> {
            assertThat(gap.wanted().from()).isEqualTo(BY.minusDays(7));
            assertThat(gap.wanted().until()).isEqualTo(BY);
            assertThat(gap.misplaced()).isEmpty();
        });
    }

    @ParameterizedTest
    @CsvSource({"2026-03-13", "2026-03-24"})
    void aRefillVisitUpToTheDateKeepsIt(LocalDate day) {
        assertThat(refill(refillOn(day, State.BOOKED))).isEmpty();
    }

    @Test
    void aRefillVisitAfterTheDateIsSaidToMissIt() {
        assertThat(refill(refillOn(BY.plusDays(1), State.BOOKED)))
                .singleElement()
                .satisfies(gap -> assertThat(gap.misplaced()).isPresent());
    }

    @Test
    void anEarlierRefillDoesNotAnswerForTheNext() {
        assertThat(refill(refillOn(TODAY.minusDays(90), State.ATTENDED))).hasSize(1);
    }

    @Test
    void aCancelledRefillDoesNotCount() {
        assertThat(refill(refillOn(BY, State.CANCELLED))).hasSize(1);
    }

    @Test
    void aRefillFarAheadIsNotShownYet() {
        var gaps = new Gaps(TODAY, 60, "refill", 7);
        assertThat(gaps.of(CHILD, Optional.empty(), Optional.of(TODAY.plusDays(67)), List.of()))
                .hasSize(1);
        assertThat(gaps.of(CHILD, Optional.empty(), Optional.of(TODAY.plusDays(68)), List.of()))
                .isEmpty();
    }
}
