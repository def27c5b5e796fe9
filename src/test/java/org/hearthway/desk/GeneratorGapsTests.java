package org.hearthway.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.desk.DeskSamples.CHILD;
import static org.hearthway.desk.DeskSamples.TODAY;
import static org.hearthway.desk.DeskSamples.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.desk.Composer.Gap;
import org.hearthway.desk.DeskContent.GeneratorRules;
import org.hearthway.desk.DeskContent.GeneratorRules.Kinds;
import org.hearthway.stimulator.Stimulators.Due;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.Answer;
import org.hearthway.visit.Visit.State;
import org.junit.jupiter.api.Test;

class GeneratorGapsTests {

    private static final LocalDate BY = TODAY.plusDays(20);
    private static final GeneratorRules RULES = new GeneratorRules(
            new Kinds("programming", Set.of("review")), new Kinds("team-meeting", Set.of("operation")), 14);

    private static List<Gap> gaps(Optional<LocalDate> read, Optional<LocalDate> replace, Visit... visits) {
        var due = List.of(new Due("SG-1", read, Optional.empty(), replace));
        var checks = new GeneratorGaps(RULES, TODAY).of(due, List.of(visits)).toList();
        return new Gaps(TODAY, 60, "refill")
                .of(CHILD, List.of(), Optional.empty(), checks, List.of(visits))
                .toList();
    }

    private static Visit on(String kind, LocalDate day, State state) {
        return visit("v", kind, day.atTime(9, 0), Optional.empty(), Answer.NONE, state);
    }

    @Test
    void asksForAVisitToReadTheBatteryAndForOneToPlanTheNewGenerator() {
        assertThat(gaps(Optional.of(BY), Optional.of(BY.plusDays(5))))
                .extracting(gap -> gap.wanted().kind() + " " + gap.wanted().purpose())
                .containsExactly("programming battery/1", "team-meeting generator/1");
    }

    @Test
    void aVisitOfAKindThatDoesAsWellKeepsIt() {
        assertThat(gaps(Optional.of(BY), Optional.empty(), on("review", BY.plusDays(3), State.BOOKED)))
                .isEmpty();
        assertThat(gaps(Optional.of(BY), Optional.empty(), on("review", BY.plusDays(15), State.BOOKED)))
                .hasSize(1);
        assertThat(gaps(Optional.of(BY), Optional.empty(), on("review", BY, State.CANCELLED)))
                .hasSize(1);
        assertThat(gaps(Optional.empty(), Optional.of(BY), on("review", BY, State.BOOKED)))
                .hasSize(1);
    }

    @Test
    void aVisitThatTookPlaceAnswersUntilItsReadingIsWrittenDown() {
        var yesterday = TODAY.minusDays(1);
        assertThat(gaps(Optional.of(yesterday), Optional.empty(), on("programming", yesterday, State.ATTENDED)))
                .isEmpty();
        assertThat(gaps(
                        Optional.of(yesterday),
                        Optional.empty(),
                        on("programming", yesterday.minusDays(15), State.ATTENDED)))
                .hasSize(1);
    }

    @Test
    void whatLiesFarAheadIsNotAskedForYet() {
        assertThat(gaps(Optional.of(TODAY.plusDays(75)), Optional.empty())).isEmpty();
        assertThat(gaps(Optional.of(TODAY.plusDays(74)), Optional.empty())).hasSize(1);
    }
}
