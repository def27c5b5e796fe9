package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.NotAvailable;
import org.hearthway.program.CareTurns;
import org.hearthway.program.CareTurns.Turn;
import org.hearthway.program.ProgramPauses;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Excepted;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.Rhythm;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

class StoredCareTurnsTests extends OnAProgram {

    @Autowired
    CareTurns turns;

    @Autowired
    ProgramPauses pauses;

    private final ProgramLine rolling = Lines.with(Lines.line("roll-helper"), ProgramLine.Side.EACH);

    @BeforeEach
    void aProgramWithAMovementThatARuleMayForbid() {
        programs.save(therapist, child, new Draft(TODAY, List.of(Lines.line("bridge"), rolling), "first steps"), 0);
    }

    private List<Turn> turns() {
        return turns.between(therapist, child, TODAY.minusDays(14), TODAY.plusDays(14));
    }

    /** Reference values, EX-12 and SDR-W1: no passive twist until March 24, 2026. */
    @Test
    void anExerciseIsShutOffAndOpensAgain() {
        var until = LocalDate.of(2026, 3, 24);
        path.rule("passive-trunk-twist", true, TODAY.plusDays(1), until);
        assertThat(turns().stream().filter(turn -> turn.exercise().equals("roll-helper")))
                .extracting(Turn::day, Turn::forbids, Turn::inProgram)
                .containsExactly(tuple(TODAY.plusDays(1), true, true), tuple(until, false, true));
        assertThat(turns()).extracting(Turn::exercise).doesNotContain("bridge");
    }

    @Test
    void whatTheLibraryHasBesideTheProgramIsToldToo() {
        path.rule("forced-passive-range", true, TODAY, TODAY.plusDays(50));
        assertThat(turns())
                .filteredOn(turn -> turn.exercise().equals("hamstring-helper"))
                .singleElement()
                .satisfies(turn -> assertThat(turn.inProgram()).isFalse());
    }

    @Test
    void aRuleThatOnlyWarnsShutsNothingOff() {
        path.rule("passive-trunk-twist", false, TODAY, TODAY.plusDays(3));
        assertThat(turns()).isEmpty();
        assertThat(turns.resting(parent, child, TODAY)).isEmpty();
    }

    @Test
    void whatHasLeaveDoesNotTurn() {
        path.rule("passive-trunk-twist", true, TODAY, TODAY.plusDays(5));
        var leave = new Excepted("passive-trunk-twist", TODAY, TODAY.plusDays(5), "healed, seen today");
        var free = new ProgramLine(
                rolling.exercise(),
                rolling.prescription(),
                rolling.days(),
                TODAY,
                Optional.empty(),
                "",
                rolling.priority(),
                "",
                List.of(leave));
        programs.save(therapist, child, new Draft(TODAY, List.of(free), "leave"), 1);
        assertThat(turns()).extracting(Turn::exercise).doesNotContain("roll-helper");
        assertThat(week.days(parent, child, TODAY, 1).get(0).planned()).hasSize(1);
    }

    @Test
    void theFamilyIsToldWhatRestsOnTheDayAndByWhichRule() {
        path.rule("passive-trunk-twist", true, TODAY, TODAY.plusDays(5));
        assertThat(turns.resting(parent, child, TODAY)).singleElement().satisfies(resting -> {
            assertThat(resting.exercise().id()).isEqualTo("roll-helper");
            assertThat(resting.care().until()).isEqualTo(TODAY.plusDays(5));
        });
        assertThat(turns.resting(parent, child, TODAY.plusDays(5))).isEmpty();
        accepted.hidden.add("roll-helper");
        assertThat(turns.resting(parent, child, TODAY))
                .as("what no administrator accepted is not named")
                .isEmpty();
    }

    /** Of the days that an exercise may be on, those that it was laid out for. */
    @Test
    void nothingIsSaidToRestOnADayThatItWasNotFor() {
        var twice = rolling.with(rolling.prescription().with(new Rhythm(2, Rhythm.Spread.ANY)));
        programs.save(therapist, child, new Draft(TODAY, List.of(twice), "twice a week"), 1);
        path.rule("passive-trunk-twist", true, TODAY, TODAY.plusDays(50));
        var monday = LocalDate.of(2026, 3, 16);
        assertThat(monday.datesUntil(monday.plusDays(7))
                        .filter(day -> !turns.resting(parent, child, day).isEmpty()))
                .hasSize(2);
    }

    @Test
    void nothingRestsByARuleWhileTheWholeProgramRests() {
        path.rule("passive-trunk-twist", true, TODAY, TODAY.plusDays(5));
        pauses.pause(parent, child, new ProgramPauses.Asked(TODAY, Optional.empty(), ProgramPauses.Why.HOLIDAY, ""));
        assertThat(turns.resting(parent, child, TODAY)).isEmpty();
    }

    @Test
    void asksTheGate() {
        gate.deny(Action.SEE_FOLDER);
        assertThatThrownBy(this::turns).isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_WEEK);
        assertThatThrownBy(() -> turns.resting(parent, child, TODAY)).isInstanceOf(NotAvailable.class);
    }
}
