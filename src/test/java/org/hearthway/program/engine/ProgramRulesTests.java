package org.hearthway.program.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.program.engine.Lines.DAY;
import static org.hearthway.program.engine.Lines.line;
import static org.hearthway.program.engine.Lines.with;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Problem;
import org.hearthway.program.engine.ProgramLine.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProgramRulesTests {

    private static final Map<String, Boolean> LIBRARY = Map.of("bridge", false, "clam", true);

    private static List<Problem> check(ProgramLine... lines) {
        return ProgramRules.check(List.of(lines), LIBRARY);
    }

    @Test
    void takesASoundLine() {
        assertThat(check(line("bridge"))).isEmpty();
    }

    @Test
    void takesAProgramWithoutLines() {
        assertThat(check()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "0,8,0,0,1,sets",
        "11,8,0,0,1,sets",
        "-1,8,0,0,1,sets",
        "2,0,0,0,1,repetitions",
        "2,10000,0,0,1,repetitions",
        "2,101,0,0,1,repetitions",
        "2,-8,0,0,1,repetitions",
        "2,8,-1,0,1,holdSeconds",
        "2,8,601,0,1,holdSeconds",
        "1,0,0,241,1,minutes",
        "1,0,0,-5,1,minutes",
        "1,8,0,5,1,minutes",
        "2,8,0,0,0,timesADay",
        "2,8,0,0,7,timesADay"
    })
    void refusesADoseOutOfBoundsAndNamesTheField(
            int sets, int repetitions, int hold, int minutes, int timesADay, String field) {
        assertThat(check(line("bridge"), with(line("bridge"), new Dose(sets, repetitions, hold, minutes, timesADay))))
                .extracting(Problem::field)
                .contains("lines[1]." + field);
    }

    @ParameterizedTest
    @CsvSource({"1,1,0,0,1", "10,100,600,0,6", "1,0,0,1,1", "10,0,0,240,6"})
    void takesADoseAtItsBounds(int sets, int repetitions, int hold, int minutes, int timesADay) {
        assertThat(check(with(line("bridge"), new Dose(sets, repetitions, hold, minutes, timesADay))))
                .isEmpty();
    }

    @Test
    void aProblemNamesTheLineAndTheBoundButNotWhatWasTyped() {
        var problem = check(with(line("bridge"), new Dose(2, 10_000, 0, 0, 1))).get(0);
        assertThat(problem.key()).isEqualTo("program.problem.repetitions");
        assertThat(problem.args()).containsExactly(1, 1, 100);
    }

    @Test
    void refusesAnEndBeforeTheStart() {
        assertThat(check(Lines.between(line("bridge"), DAY, DAY.minusDays(1))))
                .containsExactly(Problem.at("lines[0].until", "program.problem.until", 1, DAY));
        assertThat(check(Lines.between(line("bridge"), DAY, DAY))).isEmpty();
    }

    @Test
    void refusesYearsThatAreSlipsOfThePen() {
        assertThat(check(Lines.between(line("bridge"), LocalDate.of(206, 3, 12), DAY)))
                .extracting(Problem::field)
                .containsExactly("lines[0].from");
        assertThat(check(Lines.between(line("bridge"), DAY, LocalDate.of(20261, 3, 12))))
                .extracting(Problem::field)
                .containsExactly("lines[0].until");
    }

    @Test
    void refusesAnExerciseThatTheLibraryDoesNotHold() {
        assertThat(check(line("moon-walk")))
                .containsExactly(Problem.at("lines[0].exercise", "program.problem.exercise", 1));
    }

    @Test
    void refusesALongNote() {
        assertThat(check(with(line("bridge"), "x".repeat(500)))).isEmpty();
        assertThat(check(with(line("bridge"), "x".repeat(10_000))))
                .containsExactly(Problem.at("lines[0].note", "program.problem.note", 1, 500));
    }

    @Test
    void refusesALineWithoutDays() {
        assertThat(check(with(line("bridge"), EnumSet.noneOf(DayOfWeek.class))))
                .containsExactly(Problem.at("lines[0].days", "program.problem.days", 1));
    }

    @Test
    void wantsASideWhereThereAreSidesAndNoneWhereThereAreNone() {
        assertThat(check(line("clam"))).extracting(Problem::key).containsExactly("program.problem.side.missing");
        assertThat(check(with(line("bridge"), Side.EACH)))
                .extracting(Problem::key)
                .containsExactly("program.problem.side.none");
        assertThat(check(with(line("clam"), Side.LEFT))).isEmpty();
    }

    @Test
    void refusesTheSameExerciseTwiceOnADay() {
        var monday = with(line("bridge"), EnumSet.of(DayOfWeek.MONDAY));
        var alsoMonday = with(line("bridge"), EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY));
        var friday = with(line("bridge"), EnumSet.of(DayOfWeek.FRIDAY));
        assertThat(check(monday, alsoMonday))
                .containsExactly(Problem.at("lines[1].exercise", "program.problem.twice", 2, 1));
        assertThat(check(monday, friday)).isEmpty();
        assertThat(check(
                        Lines.between(monday, DAY, DAY.plusDays(20)),
                        Lines.between(alsoMonday, DAY.plusDays(21), DAY.plusDays(40))))
                .isEmpty();
    }

    @Test
    void refusesTooManyLines() {
        assertThat(ProgramRules.check(Collections.nCopies(31, line("bridge")), LIBRARY))
                .contains(Problem.at("lines", "program.problem.lines", 30));
    }

    @Test
    void aVersionBeginsTodayOrWithinAYear() {
        assertThat(ProgramRules.checkEffective(DAY, DAY)).isEmpty();
        assertThat(ProgramRules.checkEffective(DAY.plusDays(366), DAY)).isEmpty();
        assertThat(ProgramRules.checkEffective(DAY.minusDays(1), DAY)).hasSize(1);
        assertThat(ProgramRules.checkEffective(DAY.plusDays(367), DAY)).hasSize(1);
    }

    @Test
    void aReasonHasAFewWords() {
        assertThat(ProgramRules.checkReason("  ab ")).hasSize(1);
        assertThat(ProgramRules.checkReason("abc")).isEmpty();
        assertThat(ProgramRules.checkReason("x".repeat(501))).hasSize(1);
    }
}
