package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.pump.engine.Sample.dose;
import static org.hearthway.pump.engine.Sample.newYork;
import static org.hearthway.pump.engine.Sample.refused;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hearthway.pump.engine.DoseContext.Origin;
import org.hearthway.pump.engine.DoseContext.Phase;
import org.hearthway.pump.engine.DoseStep.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseTests {

    private static final Instant AT = newYork("2026-05-04T09:00");

    private static final DoseRules RULES = DoseRules.usual();

    private static DoseStep step(String from, String to, DoseContext who) {
        return DoseStep.check(dose(from), dose(to), AT, who, RULES);
    }

    private static List<Kind> kinds(DoseStep step) {
        return step.findings().stream().map(DoseStep.Finding::kind).toList();
    }

    /** Reference table ITB-W1 (US label; Boster, Neuromodulation 2016;19(6):623-631): more than 8 hours is strict. */
    @ParameterizedTest
    @CsvSource({
        "50, 6.0, 8, 100, true",
        "75, 9.5, 8, 75, false",
        "50, 8.0, 8, 100, true",
        "50, 8.0001, 8, 50, false",
        "50, 10, 12, 100, true",
        "25, 8.5, 8, 25, false"
    })
    void theFirstDoseIsTwiceTheTestUnlessItsEffectLasted(
            String test, String hours, int limit, String first, boolean doubled) {
        var dose = FirstDose.after(Mass.micrograms(test), Elapsed.hours(hours), RULES.withEffectHours(limit));
        assertThat(dose.dose()).isEqualTo(dose(first));
        assertThat(dose.doubled()).isEqualTo(doubled);
    }

    /** Reference table ITB-W2: 105 and 115 are inside, 152 from 132 is not (15.1515 percent). */
    @ParameterizedTest
    @CsvSource({
        "100, 105, 5, true",
        "100, 115, 15, true",
        "100, 115.001, 15.001, false",
        "100, 104.999, 4.999, false",
        "132, 152, 15.1515, false",
        "240, 216, -10, true",
        "200, 160, -20, true",
        "200, 159.999, -20.0005, false",
        "200, 181, -9.5, false",
        "100, 100, 0, true"
    })
    void aStepIsHeldAgainstWhatIsUsualForChildren(String from, String to, String percent, boolean usual) {
        var step = step(from, to, DoseContext.child(9));
        assertThat(step.percent().rounded(4)).isEqualByComparingTo(percent);
        assertThat(step.findings().isEmpty()).isEqualTo(usual);
    }

    /** Reference table ITB-W2, last line: steps of 10 percent compound to 161.051, not to 150. */
    @Test
    void stepsCompound() {
        var dose = dose("100").exact();
        for (var i = 0; i < 5; i++) {
            dose = dose.multiply(11).divide(10);
        }
        assertThat(new DailyDose(dose).microgramsPerDay()).isEqualByComparingTo("161.051");
    }

    /** Reference ITB-05 and ITB-06 (Boster 2016; US label): adults with spinal tone 10 to 30, upkeep 5 to 20. */
    @Test
    void whatIsUsualDependsOnAgeOriginAndPhase() {
        var adult = new DoseContext(30, Origin.SPINAL, Phase.FINDING, Optional.empty(), List.of());
        assertThat(kinds(step("300", "345", DoseContext.child(9)))).isEmpty();
        assertThat(kinds(step("300", "354", DoseContext.child(9)))).containsExactly(Kind.LARGER_STEP);
        assertThat(kinds(step("300", "354", DoseContext.child(9).in(Phase.UPKEEP))))
                .isEmpty();
        assertThat(kinds(step("300", "366", DoseContext.child(9).in(Phase.UPKEEP))))
                .containsExactly(Kind.LARGER_STEP, Kind.MAY_BE_TOO_MUCH);
        assertThat(kinds(step("300", "327", adult))).containsExactly(Kind.SMALLER_STEP);
        assertThat(kinds(step("300", "390", adult))).containsExactly(Kind.MAY_BE_TOO_MUCH);
        assertThat(kinds(step("300", "390.001", adult))).containsExactly(Kind.LARGER_STEP, Kind.MAY_BE_TOO_MUCH);
    }

    /** Reference ITB-03 (US label): no increase in the first 24 hours; a decrease may be. */
    @Test
    void nothingIsRaisedInTheFirstDay() {
        var begun = AT.minus(Duration.ofDays(1)).plusSeconds(1);
        assertThat(kinds(step("100", "110", DoseContext.child(9).since(begun)))).containsExactly(Kind.IN_THE_FIRST_DAY);
        assertThat(kinds(step("100", "90", DoseContext.child(9).since(begun)))).isEmpty();
        assertThat(kinds(step("100", "110", DoseContext.child(9).since(begun.minusSeconds(1)))))
                .isEmpty();
        assertThat(kinds(step("100", "110", DoseContext.child(9).since(AT.plusSeconds(1)))))
                .isEmpty();
    }

    /** Reference ITB-05 (Boster 2016): at most once each 24 hours. */
    @Test
    void aDoseIsRaisedOnceInADay() {
        var begun = AT.minus(Duration.ofDays(30));
        var who = DoseContext.child(9)
                .since(begun, AT.minus(Duration.ofDays(1)), AT.minusSeconds(86_399), AT.minusSeconds(7200));
        var step = step("100", "110", who);
        assertThat(step.increasesWithinADay()).isEqualTo(3);
        assertThat(kinds(step)).containsExactly(Kind.AGAIN_WITHIN_A_DAY);
        assertThat(step.findings().get(0).figures().get(0).rounded(2)).isEqualByComparingTo("2");
        assertThat(kinds(step("100", "90", who))).isEmpty();
    }

    /** Reference ITB-08 (US label, ranges from memory): 24 to 1199 below 12 years, 22 to 1400 from 12 on. */
    @ParameterizedTest
    @CsvSource({
        "23.999, 11, BELOW_TRIALS",
        "24, 11, ",
        "1199, 11, ",
        "1199.001, 11, ABOVE_TRIALS",
        "21.999, 12, BELOW_TRIALS",
        "22, 12, ",
        "1400, 12, ",
        "1400.001, 12, ABOVE_TRIALS",
        "100, 3, YOUNGER_THAN_SHOWN",
        "100, 4, "
    })
    void aTotalIsHeldAgainstTheTrials(String total, int years, Kind kind) {
        var found = kinds(step(total, total, DoseContext.child(years)));
        assertThat(found).isEqualTo(kind == null ? List.of() : List.of(kind));
    }

    /** Reference ITB-07 (US label): most end at 90 to 703, spinal origin 300 to 800. */
    @Test
    void inUpkeepATotalIsHeldAgainstWhereMostEnd() {
        var upkeep = DoseContext.child(9).in(Phase.UPKEEP);
        assertThat(kinds(step("703", "703", upkeep))).isEmpty();
        assertThat(kinds(step("704", "704", upkeep))).containsExactly(Kind.UNLIKE_MOST);
        assertThat(kinds(step("704", "704", DoseContext.child(9)))).isEmpty();
        var spinal = new DoseContext(9, Origin.SPINAL, Phase.UPKEEP, Optional.empty(), List.of());
        assertThat(kinds(step("299", "299", spinal))).containsExactly(Kind.UNLIKE_MOST);
        assertThat(kinds(step("704", "704", spinal))).isEmpty();
    }

    /** Reference ITB-01, ITB-02: the test doses are 1.0, 1.5, 2.0 and 0.5 mL of 50 mcg/mL (US label; Boster 2016). */
    @ParameterizedTest
    @CsvSource({"50, 1.0", "75, 1.5", "100, 2.0", "25, 0.5"})
    void aTestDoseHasAVolume(String test, String volume) {
        assertThat(Mass.micrograms(test).in(Sample.strength("50"))).isEqualTo(Sample.ml(volume));
    }

    @Test
    void aSlipOfAThousandIsRefused() {
        refused("dose", "outside", () -> dose("0.11"));
        refused("dose", "outside", () -> dose("110000"));
        refused("dose", "outside", () -> dose("110.0001"));
        refused("strength", "outside", () -> Sample.strength("0.5"));
        refused("strength", "outside", () -> Sample.strength("2"));
        refused("strength", "outside", () -> Sample.strength("500000"));
        refused("volume", "outside", () -> Sample.ml("20000"));
        refused("dose", "outside", () -> Mass.micrograms("0.05"));
        refused("test", "outside", () -> FirstDose.after(Mass.micrograms("5"), Elapsed.hours("6"), RULES));
        refused("effect", "outside", () -> FirstDose.after(Mass.micrograms("50"), Elapsed.hours("73"), RULES));
    }
}
