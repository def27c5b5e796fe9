package org.hearthway.program.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.hearthway.program.engine.UsualDose.Amount;
import org.hearthway.program.engine.UsualDose.Outside;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A dose beside what is usual. */
class UsualDoseTests {

    // EX-03 and EX-05: 1 to 3 rounds of 6 to 15 on 2 to 4 days (Verschuren 2016, Faigenbaum 2009; from memory)
    private static final UsualDose STRENGTH = new UsualDose(
            new Span(7, 18),
            Optional.of(new Span(1, 3)),
            Optional.of(new Span(6, 15)),
            Optional.of(new Span(0, 5)),
            Optional.empty(),
            Optional.of(new Span(1, 1)),
            Optional.of(new Span(2, 4)),
            "test");

    // EX-01: 30 to 90 minutes in a standing device on 5 days (Paleg, Smith and Glickman 2013)
    private static final UsualDose STANDING = new UsualDose(
            new Span(2, 18),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Span(30, 90)),
            Optional.empty(),
            Optional.of(new Span(5, 5)),
            "test");

    @Test
    void bothEndsOfARangeAreUsual() {
        assertThat(STRENGTH.outside(new Dose(1, 6, 0, 0, 1), 2)).isEmpty();
        assertThat(STRENGTH.outside(new Dose(3, 15, 5, 0, 1), 4)).isEmpty();
        assertThat(STANDING.outside(new Dose(1, 0, 0, 90, 3), 5)).isEmpty();
    }

    @Test
    void everyNumberOneBeyondIsToldWithItsRange() {
        assertThat(STRENGTH.outside(new Dose(4, 16, 6, 0, 2), 5))
                .containsExactly(
                        new Outside(Amount.SETS, 4, new Span(1, 3)),
                        new Outside(Amount.REPETITIONS, 16, new Span(6, 15)),
                        new Outside(Amount.HOLD_SECONDS, 6, new Span(0, 5)),
                        new Outside(Amount.TIMES_A_DAY, 2, new Span(1, 1)),
                        new Outside(Amount.DAYS, 5, new Span(2, 4)));
        assertThat(STANDING.outside(new Dose(1, 0, 0, 29, 1), 6))
                .extracting(Outside::amount)
                .containsExactly(Amount.MINUTES, Amount.DAYS);
    }

    @Test
    void minutesAreNotHeldAgainstRepetitions() {
        assertThat(STRENGTH.outside(new Dose(1, 0, 0, 10, 1))).isEmpty();
        assertThat(STANDING.outside(new Dose(1, 10, 0, 0, 1))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2-5,2,5", "3,3,3", " 4-4 ,4,4", "0-10,0,10"})
    void aRangeIsReadAsItIsWritten(String text, int least, int most) {
        assertThat(Span.parse(text)).contains(new Span(least, most));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5-2", "2-", "-2", "two", "2-3-4", "", "2.5", "99999"})
    void whatIsNoRangeIsNone(String text) {
        assertThat(Span.parse(text)).isEmpty();
    }

    @Test
    void theNearestUsualNumberIsAnEndOrTheNumberItself() {
        var span = new Span(6, 15);
        assertThat(span.nearest(4)).isEqualTo(6);
        assertThat(span.nearest(9)).isEqualTo(9);
        assertThat(span.nearest(20)).isEqualTo(15);
    }
}
