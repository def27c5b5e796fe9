package org.hearthway.program.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.program.engine.Load.Band;
import org.hearthway.program.engine.Load.Body;
import org.hearthway.program.engine.Load.Weight;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.Rhythm.Spread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrescriptionTests {

    private static final Pace PACE = new Pace(4, 30);

    private static Prescription of(Dose dose, int rest, Side side, Rhythm rhythm) {
        return new Prescription(dose, Optional.of(rest), side, new Body(), rhythm, Optional.of(5), Optional.empty());
    }

    /**
     * Supported standing on 5 days a week, minutes of the week: Paleg, Smith and Glickman, Pediatr Phys Ther 2013;25:232
     * (reference values, EX-01): bone 60 to 90 a day, hip 60, range 45 to 60, tone 30 to 45.
     */
    @ParameterizedTest
    @CsvSource({"60,300", "90,450", "45,225", "30,150"})
    void standingOnFiveDaysAddsUp(int minutes, int week) {
        var standing = of(new Dose(1, 0, 0, minutes, 1), 0, Side.NONE, new Rhythm(5, Spread.ANY));
        assertThat(standing.minutesAWeek(PACE)).isEqualTo(week);
    }

    /** 2 rounds of 8 at 4 s on each side, 60 s of rest between: 188 s, 4 minutes; twice a day on 3 days 24. Common practice. */
    @Test
    void minutesAreThoseOfOneTime() {
        var clam = of(new Dose(2, 8, 0, 0, 2), 60, Side.EACH, new Rhythm(3, Spread.NOT_FOLLOWING));
        assertThat(clam.minutes(PACE)).isEqualTo(4);
        assertThat(clam.minutesAWeek(PACE)).isEqualTo(24);
    }

    /** Verschuren and others 2016 (reference values, EX-03, from memory): 50 to 85 % of a most of 20 kg is 10 to 17 kg. */
    @Test
    void aShareOfAWeightIsExact() {
        assertThat(new Weight(20_000).percent(50)).isEqualTo(new Weight(10_000));
        assertThat(new Weight(20_000).percent(85)).isEqualTo(new Weight(17_000));
    }

    /** Faigenbaum and others 2009 (reference values, EX-05, from memory): 10 kg and 5 to 10 % more is 10.5 to 11.0 kg. */
    @Test
    void moreThanTenPercentAtOnceIsABigStep() {
        var ten = new Weight(10_000);
        assertThat(ten.percent(105)).isEqualTo(new Weight(10_500));
        assertThat(ten.percent(110)).isEqualTo(new Weight(11_000));
        assertThat(Load.isABigStep(ten, new Weight(11_000))).isFalse();
        assertThat(Load.isABigStep(ten, new Weight(11_001))).isTrue();
        assertThat(Load.isABigStep(ten, new Weight(9_000))).isFalse();
        assertThat(Load.isABigStep(new Band(1), new Band(3))).isFalse();
    }

    @Test
    void refusesLoadsThatAreSlipsOfThePen() {
        assertThatThrownBy(() -> new Weight(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Weight(200_001)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band(11)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new Weight(1).percent(1)).isEqualTo(new Weight(1));
    }

    @Test
    void saysAllThatIsWrong() {
        var dose = new Dose(2, 0, 0, 0, 1);
        var wrong = new Prescription(
                dose,
                Optional.of(601),
                Side.NONE,
                new Body(),
                new Rhythm(3, Spread.ANY),
                Optional.of(11),
                Optional.of(new Progression(4, 5, 4, dose, new Body())));
        assertThat(wrong.check(1))
                .containsExactly(
                        Problem.at("lines[1].repetitions", "program.problem.repetitions", 2, 1, 100),
                        Problem.at("lines[1].restSeconds", "program.problem.restSeconds", 2, 600),
                        Problem.at("lines[1].effort", "program.problem.effort", 2, 10),
                        Problem.at("lines[1].progression", "program.problem.progression", 2));
    }

    @Test
    void refusesANextStepThatIsNone() {
        var dose = new Dose(3, 10, 0, 0, 1);
        var same = Optional.of(new Progression(4, 5, 4, dose, new Body()));
        var heavier = Optional.of(new Progression(4, 5, 4, dose, new Weight(500)));
        var rhythm = new Rhythm(3, Spread.ANY);
        assertThat(new Prescription(dose, Optional.of(0), Side.NONE, new Body(), rhythm, Optional.empty(), same)
                        .check(0))
                .containsExactly(Problem.at("lines[0].progression", "program.problem.progression.same", 1));
        assertThat(new Prescription(dose, Optional.of(600), Side.NONE, new Body(), rhythm, Optional.of(0), heavier)
                        .check(0))
                .isEmpty();
    }
}
