package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.ProgramPauses;
import org.hearthway.program.ProgramPauses.Asked;
import org.hearthway.program.ProgramPauses.Why;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.events.ProgramPaused;
import org.hearthway.program.events.ProgramResumed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

class StoredPausesTests extends OnAProgram {

    @Autowired
    ProgramPauses pauses;

    @BeforeEach
    void aProgramOfEveryDay() {
        programs.save(parent, child, new Draft(TODAY, List.of(Lines.line("bridge")), "first steps"), 0);
        heard.changes.clear();
    }

    private List<LocalDate> plannedDays() {
        return week.days(parent, child, TODAY, 7).stream()
                .filter(day -> !day.planned().isEmpty())
                .map(HomeWeek.Day::date)
                .toList();
    }

    @Test
    void nothingIsPlannedWhileAProgramRests() {
        pauses.pause(parent, child, new Asked(TODAY.plusDays(1), Optional.of(TODAY.plusDays(4)), Why.HOLIDAY, "lake"));
        assertThat(plannedDays()).containsExactly(TODAY, TODAY.plusDays(5), TODAY.plusDays(6));
        assertThat(pauses.all(parent, child)).singleElement().satisfies(pause -> {
            assertThat(pause.end()).contains(TODAY.plusDays(5));
            assertThat(pause.why()).isEqualTo(Why.HOLIDAY);
            assertThat(pause.by()).isEqualTo("Parent");
        });
        assertThat(heard.changes).singleElement().isInstanceOf(ProgramPaused.class);
    }

    @Test
    void aFeverThatNobodyKnowsTheEndOfEndsWhenSomebodySaysSo() {
        pauses.pause(parent, child, new Asked(TODAY.minusDays(2), Optional.empty(), Why.ILL, ""));
        assertThat(plannedDays()).isEmpty();
        var pause = pauses.all(parent, child).get(0);
        pauses.goOn(parent, child, pause.number(), TODAY.plusDays(2));
        assertThat(plannedDays()).startsWith(TODAY.plusDays(2)).hasSize(5);
        assertThat(heard.changes).last().isInstanceOf(ProgramResumed.class);
        assertThatThrownBy(() -> pauses.goOn(parent, child, pause.number(), TODAY.plusDays(1)))
                .as("it ends once")
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void aPauseThatNeverBeganIsGone() {
        pauses.pause(parent, child, new Asked(TODAY.plusDays(1), Optional.empty(), Why.HOLIDAY, ""));
        var number = pauses.all(parent, child).get(0).number();
        pauses.goOn(parent, child, number, TODAY.plusDays(1));
        assertThat(pauses.all(parent, child)).isEmpty();
        assertThat(plannedDays()).hasSize(7);
    }

    @Test
    void twoPausesOfOneDayBothHold() {
        pauses.pause(parent, child, new Asked(TODAY, Optional.of(TODAY.plusDays(3)), Why.ILL, ""));
        pauses.pause(parent, child, new Asked(TODAY.plusDays(2), Optional.of(TODAY.plusDays(5)), Why.HOSPITAL, ""));
        assertThat(plannedDays()).containsExactly(TODAY.plusDays(6));
    }

    private List<Problem> problems(Asked asked) {
        return catchThrowableOfType(Invalid.class, () -> pauses.pause(parent, child, asked))
                .problems();
    }

    @Test
    void namesFieldAndBoundOfWhatItRefuses() {
        assertThat(problems(new Asked(TODAY.minusDays(15), Optional.empty(), Why.ILL, "")))
                .containsExactly(
                        Problem.at("from", "program.pause.problem.from", TODAY.minusDays(14), TODAY.plusDays(366)));
        assertThat(problems(new Asked(TODAY, Optional.of(TODAY.minusDays(1)), Why.ILL, "x".repeat(501))))
                .extracting(Problem::field)
                .containsExactly("last", "note");
        pauses.pause(parent, child, new Asked(TODAY, Optional.of(TODAY.plusDays(3)), Why.ILL, ""));
        var number = pauses.all(parent, child).get(0).number();
        for (var wrong : List.of(TODAY.minusDays(1), TODAY.plusDays(5))) {
            assertThatThrownBy(() -> pauses.goOn(parent, child, number, wrong)).isInstanceOf(Invalid.class);
        }
        assertThat(pauses.all(parent, child)).hasSize(1);
    }

    @Test
    void whoHelpsFromOutsideDoesNotLetItRest() {
        var asked = new Asked(TODAY, Optional.empty(), Why.ILL, "");
        gate.deny(Action.SEE_FAMILY_PAGES);
        assertThatThrownBy(() -> pauses.pause(parent, child, asked)).isInstanceOf(NotAvailable.class);
        gate.deny(Action.CHANGE_PROGRAM, Action.LOG_SESSION);
        assertThatThrownBy(() -> pauses.pause(parent, child, asked)).isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_WEEK);
        assertThatThrownBy(() -> pauses.all(parent, child)).isInstanceOf(NotAvailable.class);
    }
}
