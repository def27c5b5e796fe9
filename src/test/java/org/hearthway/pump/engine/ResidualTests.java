package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.pump.engine.Sample.filled;
import static org.hearthway.pump.engine.Sample.ml;
import static org.hearthway.pump.engine.Sample.newYork;
import static org.hearthway.pump.engine.Sample.pump;

import java.time.Duration;
import java.util.Map;
import org.hearthway.pump.engine.Residual.Limit;
import org.hearthway.pump.engine.Residual.Look;
import org.hearthway.pump.engine.ResidualRules.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResidualTests {

    private static final ResidualRules RULES = ResidualRules.usual();

    private static Residual w5(ResidualRules rules) {
        var at = newYork("2026-05-04T09:00");
        var reservoir = filled(pump("20", "2"), at, "500", Dosing.constant("150"));
        return Residual.at(reservoir, at.plus(Duration.ofDays(40)), ml("9.5"), rules);
    }

    /** Reference example ITB-W5, computed by script. */
    @Test
    void isToldOnEveryBasis() {
        var residual = w5(RULES);
        assertThat(residual.expected()).isEqualTo(ml("8"));
        assertThat(residual.difference().rounded(4)).isEqualByComparingTo("1.5");
        assertThat(residual.percentOfExpected().orElseThrow().rounded(4)).isEqualByComparingTo("18.75");
        assertThat(residual.ratio().orElseThrow().rounded(4)).isEqualByComparingTo("0.875");
        assertThat(residual.percentOfPlanned().orElseThrow().rounded(4)).isEqualByComparingTo("12.5");
    }

    /** Reference example ITB-W5, rules A, A', B and C: the same case, two answers. */
    @ParameterizedTest
    @CsvSource({
        "2, PLANNED_DELIVERY, 100, false",
        "1, PLANNED_DELIVERY, 100, true",
        "10, EXPECTED_RESIDUAL, 15, true",
        "10, PLANNED_DELIVERY, 15, false"
    })
    void theBasisDecides(String volume, Basis basis, int percent, boolean flagged) {
        assertThat(w5(RULES.with(ml(volume), basis, percent)).flagged()).isEqualTo(flagged);
    }

    /** Reference ITB-23 and rule P4: more than 2 mL, or outside of 0.85 to 1.15; both edges pass. */
    @ParameterizedTest
    @CsvSource({
        // filled, expected, measured, flagged, which list
        "40, 10, 12, false, NONE",
        "40, 10, 12.0001, true, MORE_LEFT",
        "40, 10, 8, false, NONE",
        "40, 10, 7.9999, true, LESS_LEFT",
        "20, 10, 11.5, false, NONE",
        "20, 10, 11.5001, true, MORE_LEFT",
        "20, 10, 8.5, false, NONE",
        "20, 10, 8.4999, true, LESS_LEFT",
        "20, 10, 10, false, NONE"
    })
    void isFlaggedBeyondTwoMillilitresOrTheRatio(
            String filled, String expected, String measured, boolean flagged, Look look) {
        var residual = Residual.of(ml(filled), ml(expected), ml(measured), RULES);
        assertThat(residual.flagged()).isEqualTo(flagged);
        assertThat(residual.look()).isEqualTo(look);
    }

    /** Reference rule P4: a slow pump, 8.55 mL planned, 23 percent less given is 1.97 mL: a volume rule alone misses it. */
    @Test
    void aSlowPumpIsFlaggedByItsRatio() {
        var at = newYork("2026-01-15T10:00");
        var reservoir = filled(pump("20", "2"), at, "2000", Dosing.constant("95"));
        var refill = at.plus(Duration.ofDays(180));
        assertThat(reservoir.at(refill)).isEqualTo(ml("11.45"));
        var residual = Residual.at(reservoir, refill, ml("13.42"), RULES);
        assertThat(residual.difference().rounded(2)).isEqualByComparingTo("1.97");
        assertThat(residual.percentOfPlanned().orElseThrow().rounded(0)).isEqualByComparingTo("23");
        assertThat(residual.exceeded()).containsExactly(Limit.PERCENT);
        assertThat(residual.look()).isEqualTo(Look.MORE_LEFT);
    }

    /** Reference example ITB-W6: 2.5 percent more than 18 mL is no reason to look (Wesemann, Reg Anesth Pain Med 2014). */
    @Test
    void usualAccuracyIsNotFlagged() {
        assertThat(Residual.of(ml("20"), ml("2"), ml("1.55"), RULES).flagged()).isFalse();
    }

    /** Reference ITB-W5, guard: nothing expected, no percentage of it. */
    @Test
    void ofNothingThereIsNoPercentage() {
        var residual = Residual.of(ml("20"), ml("0"), ml("1.5"), RULES.with(ml("2"), Basis.EXPECTED_RESIDUAL, 15));
        assertThat(residual.percentOfExpected()).isEmpty();
        assertThat(residual.percent()).isEmpty();
        assertThat(residual.ratio().orElseThrow().rounded(4)).isEqualByComparingTo("0.925");
        assertThat(residual.flagged()).isFalse();
        var atOnce = Residual.of(ml("20"), ml("20"), ml("17.5"), RULES);
        assertThat(atOnce.ratio()).isEmpty();
        assertThat(atOnce.percent()).isEmpty();
        assertThat(atOnce.look()).isEqualTo(Look.LESS_LEFT);
    }

    /** Reference ITB-24 (Maino, Neuromodulation 2017;20(7):733-739). */
    @ParameterizedTest
    @CsvSource({
        "20, 20, 18.7, true",
        "20, 20, 19, false",
        "20, 20, 21.0001, true",
        "40, 40, 38.5, false",
        "40, 40, 38, false",
        "40, 40, 37.9999, true",
        "39.9, 39, 37.9, true"
    })
    void afterAFillTheMeasuredVolumeIsHeldAgainstTheInjected(
            String reservoir, String injected, String measured, boolean flagged) {
        assertThat(AfterFill.check(pump(reservoir, "2"), ml(injected), ml(measured), RULES)
                        .flagged())
                .isEqualTo(flagged);
    }

    @Test
    void ratiosAreToldRefillByRefill() {
        var first = newYork("2026-01-15T10:00");
        var second = newYork("2026-04-15T10:00");
        var series = DeliveryRatio.series(Map.of(
                second, Residual.of(ml("20"), ml("10"), ml("12"), RULES),
                first, Residual.of(ml("20"), ml("10"), ml("10"), RULES)));
        assertThat(series).extracting(DeliveryRatio::refill).containsExactly(first, second);
        assertThat(series).extracting(DeliveryRatio::flagged).containsExactly(false, true);
        assertThat(series)
                .extracting(point -> point.ratio().orElseThrow().forPlot())
                .containsExactly(1.0, 0.8);
    }
}
