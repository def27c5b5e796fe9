package org.hearthway.program.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.program.engine.MuscleWeek.Part;
import org.hearthway.program.engine.MuscleWeek.Sum;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.Rhythm.Spread;
import org.junit.jupiter.api.Test;

/** Counting by hand; how to count is common practice, no source. */
class MuscleWeekTests {

    private static Prescription on(int days, Dose dose) {
        return new Prescription(
                dose,
                Optional.empty(),
                Side.EACH,
                new Load.Body(),
                new Rhythm(days, Spread.NOT_FOLLOWING),
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void countsRoundsOfAllExercisesOfAGroup() {
        var bridge = new Part(Set.of("buttocks", "hamstrings"), false, on(3, new Dose(2, 10, 0, 0, 1)), 5);
        var stand = new Part(Set.of("buttocks", "quadriceps"), false, on(2, new Dose(3, 5, 0, 0, 2)), 4);
        // 2 rounds on 3 days are 6; 3 rounds twice a day on 2 days are 12
        assertThat(MuscleWeek.of(List.of(bridge, stand)))
                .isEqualTo(java.util.Map.of(
                        "buttocks", new Sum(18, 0), "hamstrings", new Sum(6, 0), "quadriceps", new Sum(12, 0)));
    }

    @Test
    void countsMinutesOfWhatIsHeldOrToldInMinutes() {
        var stretch = new Part(Set.of("calf"), true, on(3, new Dose(1, 3, 30, 0, 1)), 4);
        var walk = new Part(Set.of("calf"), false, on(2, new Dose(1, 0, 0, 10, 1)), 10);
        // 4 minutes on 3 days and 10 on 2
        assertThat(MuscleWeek.of(List.of(stretch, walk))).isEqualTo(java.util.Map.of("calf", new Sum(0, 32)));
    }

    @Test
    void knowsNothingOfGroupsThatNothingIsFor() {
        assertThat(MuscleWeek.of(List.of())).isEmpty();
    }
}
