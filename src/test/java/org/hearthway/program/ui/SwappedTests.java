package org.hearthway.program.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Span;
import org.hearthway.program.engine.UsualDose;
import org.junit.jupiter.api.Test;

/** The dose of a variant that takes an exercise's place. The ranges are of the tests alone. */
class SwappedTests {

    private static final Dose OWN = new Dose(2, 8, 3, 0, 1);

    private static UsualDose usual(Optional<Span> hold, Optional<Span> minutes) {
        return new UsualDose(
                new Span(2, 18),
                Optional.of(new Span(1, 3)),
                minutes.isPresent() ? Optional.empty() : Optional.of(new Span(6, 12)),
                hold,
                minutes,
                Optional.empty(),
                Optional.empty(),
                "of the tests");
    }

    private static final UsualDose TIMES = usual(Optional.of(new Span(2, 10)), Optional.empty());

    @Test
    void staysWhereItIsUsual() {
        var dose = new Dose(3, 10, 5, 0, 2);
        assertThat(Swapped.dose(dose, OWN, TIMES)).isEqualTo(dose);
    }

    @Test
    void comesToTheNearestUsualNumber() {
        assertThat(Swapped.dose(new Dose(4, 20, 30, 0, 1), OWN, TIMES)).isEqualTo(new Dose(3, 12, 10, 0, 1));
        assertThat(Swapped.dose(new Dose(1, 3, 1, 0, 1), OWN, TIMES)).isEqualTo(new Dose(1, 6, 2, 0, 1));
    }

    @Test
    void losesAHoldThatTheVariantHasNot() {
        var own = new Dose(2, 8, 0, 0, 1);
        assertThat(Swapped.dose(new Dose(2, 8, 5, 0, 1), own, usual(Optional.empty(), Optional.empty())))
                .isEqualTo(new Dose(2, 8, 0, 0, 1));
    }

    @Test
    void turnsNoTimesIntoMinutes() {
        var walk = new Dose(1, 0, 0, 10, 1);
        var minutes = usual(Optional.empty(), Optional.of(new Span(5, 20)));
        assertThat(Swapped.dose(new Dose(2, 8, 5, 0, 1), walk, minutes)).isEqualTo(walk);
        assertThat(Swapped.dose(new Dose(1, 0, 0, 45, 2), walk, minutes)).isEqualTo(new Dose(1, 0, 0, 20, 2));
    }
}
