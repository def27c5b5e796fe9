package org.hearthway.stimulator.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.stimulator.engine.RobustLineTests.readings;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.stimulator.engine.Window.Candidate;
import org.hearthway.stimulator.engine.Window.Known;
import org.hearthway.stimulator.engine.Window.Source;
import org.junit.jupiter.api.Test;

class WindowTests {

    /** Reference table DBS-W1. */
    private static final LocalDate IMPLANTED = LocalDate.of(2026, 3, 1);

    private static final int FIRST_CHECK = 13;
    private static final int EVERY = 90;

    private static final Known PLAIN =
            new Known(IMPLANTED, Charge.NEVER, Optional.empty(), Optional.empty(), Optional.of(10.0));

    private static Known estimated(LocalDate estimate) {
        return new Known(IMPLANTED, Charge.NEVER, Optional.empty(), Optional.of(estimate), Optional.of(10.0));
    }

    private static Window window(Known known, List<Level> readings) {
        return Window.of(known, readings, FIRST_CHECK);
    }

    private static Candidate opens(Window window) {
        return window.opens().orElseThrow();
    }

    /**
     * DBS-W1, from Lumsden et al., Childs Nerv Syst 2012;28(7):1091-1097: the first generators were empty after 13 months.
     * A single reminder at the mean of 24 months, 2028-03-01, is the mistake.
     */
    @Test
    void opensThirteenMonthsAfterTheImplantAndNotAtTheMeanLife() {
        var window = window(PLAIN, List.of());
        assertThat(opens(window)).isEqualTo(new Candidate(Source.AGE, LocalDate.of(2027, 4, 1)));
        assertThat(opens(window).day()).isNotEqualTo(LocalDate.of(2028, 3, 1));
        assertThat(window.closes()).isEmpty();
        assertThat(window.asksForReplacement()).isFalse();
        assertThat(window.nextReading(Optional.empty(), EVERY)).contains(LocalDate.of(2027, 4, 1));
    }

    /** Whether it is charged was not entered: the earlier date stands. */
    @Test
    void takesAGeneratorOfWhichNobodySaidForOneThatIsNotCharged() {
        var unsaid = new Known(IMPLANTED, Charge.NOT_SAID, Optional.empty(), Optional.empty(), Optional.empty());
        assertThat(opens(window(unsaid, List.of())).day()).isEqualTo(LocalDate.of(2027, 4, 1));
    }

    /** Reference table P9. */
    @Test
    void cannotSayUnderFourReadings() {
        var three = readings(BatteryUnit.PERCENT, new int[] {30, 120, 210}, "90", "60", "30");
        var window = window(PLAIN, three);
        assertThat(window.fit().orElseThrow().silence()).contains(BatteryFit.Silence.TOO_FEW);
        assertThat(opens(window).source()).isEqualTo(Source.AGE);
    }

    @Test
    void cannotSayWhereTheReadingsDoNotFall() {
        var flat = readings(BatteryUnit.PERCENT, new int[] {30, 120, 210, 300}, "100", "100", "100", "100");
        assertThat(window(PLAIN, flat).fit().orElseThrow().silence()).contains(BatteryFit.Silence.NOT_FALLING);
    }

    @Test
    void cannotSayInVoltsWithoutTheVoltageAtWhichItIsReplaced() {
        var volts = readings(BatteryUnit.VOLT, new int[] {30, 120, 210, 300}, "2.98", "2.96", "2.9", "2.8");
        var unknown = new Known(IMPLANTED, Charge.NEVER, Optional.empty(), Optional.empty(), Optional.empty());
        assertThat(window(unknown, volts).fit().orElseThrow().silence()).contains(BatteryFit.Silence.NO_END);
        var known = new Known(IMPLANTED, Charge.NEVER, Optional.empty(), Optional.empty(), Optional.of(2.6));
        assertThat(window(known, volts).fit().orElseThrow().fit()).isPresent();
    }

    /** By hand: 100 to 76 in 240 days is 0.1 a day; from 76 to 10 are 66, so 660 days. */
    @Test
    void countsAStraightFallOnToTheEnd() {
        var straight = readings(BatteryUnit.PERCENT, new int[] {0, 60, 120, 240}, "100", "94", "88", "76");
        var fit = window(PLAIN, straight).fit().orElseThrow().fit().orElseThrow();
        assertThat(fit.likely()).isEqualTo(IMPLANTED.plusDays(240 + 660));
        assertThat(fit.earliest()).isEqualTo(fit.likely());
    }

    /**
     * Reference table P9: readings run flat and then fall. By hand: the newest four, from day 360 on, fall by 4 in 30,
     * 8 in 60 and 12 in 90 days, 0.1333 a day, while all eight together fall by far less.
     */
    @Test
    void seesTheFallAtTheEndOfAFlatRun() {
        var run = readings(
                BatteryUnit.PERCENT,
                new int[] {0, 90, 180, 270, 360, 390, 420, 450},
                "100",
                "100",
                "100",
                "100",
                "99",
                "95",
                "91",
                "87");
        var fit = window(PLAIN, run).fit().orElseThrow().fit().orElseThrow();
        assertThat(fit.whole().slope()).isGreaterThan(-0.04);
        assertThat(fit.slope()).isEqualTo(fit.recent().slope());
        assertThat(fit.likely()).isEqualTo(IMPLANTED.plusDays(450 + 577));
        assertThat(fit.earliest()).isBeforeOrEqualTo(fit.likely());
    }

    @Test
    void opensOnTheEarliestOfTheThree() {
        var falling = readings(BatteryUnit.PERCENT, new int[] {0, 60, 120, 180}, "100", "80", "60", "40");
        assertThat(opens(window(PLAIN, falling)).source()).isEqualTo(Source.FIT);
        assertThat(opens(window(estimated(LocalDate.of(2026, 9, 1)), falling)))
                .isEqualTo(new Candidate(Source.ESTIMATE, LocalDate.of(2026, 9, 1)));
        assertThat(opens(window(estimated(LocalDate.of(2030, 9, 1)), List.of())).source())
                .isEqualTo(Source.AGE);
        assertThat(window(estimated(LocalDate.of(2030, 9, 1)), List.of()).candidates())
                .extracting(Candidate::source)
                .containsExactly(Source.AGE, Source.ESTIMATE);
    }

    /** Its age says only that the battery is looked at; a new generator is planned from the next of the days on. */
    @Test
    void plansANewGeneratorByMoreThanItsAge() {
        var late = LocalDate.of(2027, 9, 1);
        assertThat(window(PLAIN, List.of()).replacing()).isEmpty();
        assertThat(window(estimated(late), List.of()).opens().orElseThrow().source())
                .isEqualTo(Source.AGE);
        assertThat(window(estimated(late), List.of()).replacing()).contains(new Candidate(Source.ESTIMATE, late));
    }

    @Test
    void closesOnTheEarlierOfEstimateAndLikelyDay() {
        var falling = readings(BatteryUnit.PERCENT, new int[] {0, 60, 120, 180}, "100", "80", "60", "40");
        assertThat(window(PLAIN, falling).closes().orElseThrow().source()).isEqualTo(Source.FIT);
        var soon = LocalDate.of(2026, 9, 1);
        assertThat(window(estimated(soon), falling).closes()).contains(new Candidate(Source.ESTIMATE, soon));
    }

    /** What a charged one shows is how full it is: a low reading before its charge tells nothing of its age. */
    @Test
    void ofAChargedGeneratorOnlyTheLabelAndTheDeviceSay() {
        var emptied = readings(BatteryUnit.PERCENT, new int[] {0, 60, 120, 180}, "100", "80", "60", "40");
        var charged = new Known(IMPLANTED, Charge.AT_HOME, Optional.of(9), Optional.empty(), Optional.of(10.0));
        var window = window(charged, emptied);
        assertThat(window.candidates()).containsExactly(new Candidate(Source.LIFE, LocalDate.of(2035, 3, 1)));
        assertThat(window.fit()).isEmpty();
        var bare = new Known(IMPLANTED, Charge.AT_HOME, Optional.empty(), Optional.empty(), Optional.empty());
        assertThat(window(bare, emptied).opens()).isEmpty();
        assertThat(window(bare, emptied).nextReading(Optional.empty(), EVERY)).isEmpty();
    }

    @Test
    void asksForTheNextReadingAfterEachOneOnceItIsOpen() {
        var window = window(PLAIN, List.of());
        assertThat(window.nextReading(Optional.of(LocalDate.of(2027, 3, 31)), EVERY))
                .contains(LocalDate.of(2027, 4, 1));
        assertThat(window.nextReading(Optional.of(LocalDate.of(2027, 4, 1)), EVERY))
                .contains(LocalDate.of(2027, 6, 30));
        var closing = window(estimated(LocalDate.of(2027, 5, 10)), List.of());
        assertThat(closing.nextReading(Optional.of(LocalDate.of(2027, 4, 1)), EVERY))
                .contains(LocalDate.of(2027, 5, 10));
        assertThat(closing.nextReading(Optional.of(LocalDate.of(2027, 5, 10)), EVERY))
                .contains(LocalDate.of(2027, 8, 8));
    }
}
