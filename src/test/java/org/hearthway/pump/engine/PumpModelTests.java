package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.pump.engine.Sample.ml;
import static org.hearthway.pump.engine.Sample.pump;
import static org.hearthway.pump.engine.Sample.refused;

import java.time.Period;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hearthway.pump.engine.ResidualRules.Basis;
import org.junit.jupiter.api.Test;

class PumpModelTests {

    private static final FlowRate FLOW = FlowRate.millilitresPerDay("0.5");

    @Test
    void figuresKeepTheirBounds() {
        refused("reservoir", "outside", () -> pump("4.9", "2"));
        refused("reservoir", "outside", () -> pump("60.1", "2"));
        refused("alarm", "outside", () -> pump("20", "10.1"));
        refused("alarm", "alarm-volume", () -> pump("8", "8"));
        refused("life", "outside", () -> PumpModel.fixedRate(ml("20"), ml("2"), ml("0.2"), FLOW, Period.ofMonths(11)));
        refused("tubing", "outside", () -> PumpModel.fixedRate(ml("20"), ml("2"), ml("3"), FLOW, Period.ofYears(8)));
        refused(
                "flow",
                "outside",
                () -> PumpModel.fixedRate(
                        ml("20"), ml("2"), ml("0.2"), FlowRate.millilitresPerHour("0"), Period.ofYears(8)));
        refused("deliverable", "range", () -> new FlowRange(FlowRate.millilitresPerDay("1"), FLOW));
        refused("length", "outside", () -> Length.centimetres("0.6"));
        refused("volumePerLength", "outside", () -> VolumePerLength.millilitresPerCentimetre("2.5"));
    }

    /** Neurosurgery 2004;55(2):390-393: an alarm at 4 mL instead of 2. */
    @Test
    void theAlarmCanBeSetToAnotherVolume() {
        assertThat(pump("20", "2").withAlarm(ml("4"))).isEqualTo(pump("20", "4"));
    }

    @Test
    void whatIsTheSameAmountIsEqual() {
        assertThat(ml("2.50")).isEqualTo(ml("2.5"));
        assertThat(Sample.dose("110.0")).isEqualTo(Sample.dose("110")).hasSameHashCodeAs(Sample.dose("110"));
        assertThat(new Volume(BigFraction.of(2, 4))).isEqualTo(new Volume(BigFraction.of(1, 2)));
        assertThat(new Volume(BigFraction.of(1, 3).add(BigFraction.of(1, 6)))).isEqualTo(ml("0.5"));
    }

    @Test
    void isRoundedHalfUpWhenItIsShown() {
        assertThat(new Amount(BigFraction.of(5, 1000), Unit.PERCENT).rounded(2)).isEqualByComparingTo("0.01");
        assertThat(new Amount(BigFraction.of(-5, 1000), Unit.PERCENT).rounded(2))
                .isEqualByComparingTo("-0.01");
        assertThat(new Amount(BigFraction.of(1200), Unit.ONE).rounded(2).toPlainString())
                .isEqualTo("1200");
    }

    @Test
    void aDayThatIsNotOverDoesNotCountForwardNorBack() {
        var now = Sample.newYork("2026-05-04T09:00");
        assertThat(Elapsed.between(now, now.plusSeconds(86_399)).wholeDays()).isZero();
        assertThat(Elapsed.between(now, now.plusSeconds(86_400)).wholeDays()).isEqualTo(1);
        assertThat(Elapsed.between(now, now.minusSeconds(1)).wholeDays()).isEqualTo(-1);
        assertThat(Elapsed.between(now, now.minusSeconds(86_400)).wholeDays()).isEqualTo(-1);
    }

    @Test
    void whatIsUsualIsWhatTheReferenceSays() {
        var usual = ClinicRules.usual();
        assertThat(usual.refill()).isEqualTo(new RefillRules(5, 14, 180, 10, 1));
        assertThat(usual.residual().volume()).isEqualTo(ml("2"));
        assertThat(usual.residual().basis()).isEqualTo(Basis.PLANNED_DELIVERY);
        assertThat(usual.residual().percent()).isEqualTo(15);
        assertThat(usual.dose().effectHours()).isEqualTo(8);
        assertThat(usual.deadVolumePercent()).isEqualTo(25);
        assertThat(usual.replacement()).isEqualTo(new ReplacementRule.DaysBefore(90));
    }
}
