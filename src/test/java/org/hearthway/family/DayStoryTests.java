package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.family.Samples.day;
import static org.hearthway.family.Samples.open;
import static org.hearthway.family.Samples.said;

import java.util.Optional;
import org.hearthway.family.DayStory.Mood;
import org.hearthway.parts.DayWay;
import org.hearthway.program.HomeWeek.Outcome;
import org.junit.jupiter.api.Test;

/** How far a day has come. */
class DayStoryTests {

    private static final Optional<Integer> NO_PAIN = Optional.empty();

    @Test
    void isForRestWithoutExercises() {
        assertThat(day().mood()).isEqualTo(Mood.REST);
    }

    @Test
    void isFreshWhileNothingWasSaid() {
        assertThat(day(open("a", 5), open("b", 5)).mood()).isEqualTo(Mood.FRESH);
    }

    @Test
    void isUnderwayOnceSomethingWasSaidAndSomethingIsOpen() {
        assertThat(day(said("a", Outcome.COULD_NOT, NO_PAIN), open("b", 5)).mood())
                .isEqualTo(Mood.UNDERWAY);
    }

    @Test
    void isOverWhenNothingIsOpenAndSomethingWasDone() {
        assertThat(day(said("a", Outcome.SOME, NO_PAIN), said("b", Outcome.COULD_NOT, NO_PAIN))
                        .mood())
                .isEqualTo(Mood.OVER);
    }

    @Test
    void isSpentWhenNothingCouldBeDone() {
        assertThat(day(said("a", Outcome.COULD_NOT, NO_PAIN)).mood()).isEqualTo(Mood.SPENT);
    }

    @Test
    void putsTheCallFirstFromPainOfSevenOn() {
        assertThat(day(said("a", Outcome.DONE, Optional.of(6)), open("b", 5)).mood())
                .isEqualTo(Mood.UNDERWAY);
        assertThat(day(said("a", Outcome.DONE, Optional.of(7)), open("b", 5)).mood())
                .isEqualTo(Mood.CALL_FIRST);
        assertThat(day(said("a", Outcome.COULD_NOT, Optional.of(10)), said("b", Outcome.DONE, NO_PAIN))
                        .mood())
                .isEqualTo(Mood.CALL_FIRST);
    }

    @Test
    void countsMinutesOnlyOfWhatIsOpen() {
        var day = day(said("a", Outcome.DONE, NO_PAIN), open("b", 8), open("c", 6));
        assertThat(day.minutesLeft()).isEqualTo(14);
        assertThat(day.minutes()).isEqualTo(19);
    }

    @Test
    void lightsTheFirstOpenStoneOnThePresentDayOnly() {
        var day = day(said("a", Outcome.DONE, NO_PAIN), open("b", 8), open("c", 6));
        assertThat(day.stones(true)).containsExactly(DayWay.State.DONE, DayWay.State.NOW, DayWay.State.LATER);
        assertThat(day.stones(false)).containsExactly(DayWay.State.DONE, DayWay.State.LATER, DayWay.State.LATER);
    }
}
