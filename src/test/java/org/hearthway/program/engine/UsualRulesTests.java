package org.hearthway.program.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.program.engine.ProgramLine.Side;
import org.junit.jupiter.api.Test;

/** When an unusual dose is asked for its reason. The ranges are of the tests alone. */
class UsualRulesTests {

    private static final UsualDose USUAL = new UsualDose(
            new Span(2, 18),
            Optional.of(new Span(1, 3)),
            Optional.of(new Span(6, 15)),
            Optional.of(new Span(2, 10)),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Span(2, 4)),
            "of the tests");

    private static ProgramLine bridge(int repetitions, int hold, int days) {
        return ProgramLine.of(
                "bridge",
                new Dose(2, repetitions, hold, 0, 1),
                Side.NONE,
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.of(days)),
                Lines.DAY,
                Optional.empty(),
                "");
    }

    private static List<String> asked(ProgramLine line, ProgramLine... before) {
        return UsualRules.check(List.of(line), List.of(before), Map.of("bridge", USUAL)).stream()
                .map(Problem::field)
                .toList();
    }

    @Test
    void asksNothingWithinTheUsual() {
        assertThat(asked(bridge(15, 10, 4))).isEmpty();
        assertThat(asked(bridge(6, 0, 2))).as("no hold is no short hold").isEmpty();
    }

    @Test
    void asksWhyOfANumberOutside() {
        assertThat(asked(bridge(16, 5, 3))).containsExactly("lines[0].beyond");
        assertThat(asked(bridge(10, 1, 3))).containsExactly("lines[0].beyond");
        assertThat(asked(bridge(10, 5, 5))).containsExactly("lines[0].beyond");
    }

    @Test
    void isContentWithAReason() {
        var line = bridge(20, 5, 3);
        var told = new ProgramLine(
                line.exercise(),
                line.prescription(),
                line.days(),
                line.from(),
                line.until(),
                "",
                line.priority(),
                "swims at club level",
                List.of());
        assertThat(asked(told)).isEmpty();
    }

    @Test
    void asksNotAgainOfWhatGoesOn() {
        var daily = bridge(10, 5, 7);
        assertThat(asked(bridge(8, 5, 7), daily))
                .as("the days are as they were")
                .isEmpty();
        assertThat(asked(bridge(8, 5, 6), daily))
                .as("other days, still too many")
                .hasSize(1);
        assertThat(asked(bridge(20, 5, 7), daily))
                .as("now too many times as well")
                .hasSize(1);
    }

    @Test
    void asksNothingOfAnExerciseOfWhichNothingIsKnown() {
        assertThat(UsualRules.check(List.of(bridge(99, 0, 7)), List.of(), Map.of()))
                .isEmpty();
    }
}
