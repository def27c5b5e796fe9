package org.hearthway.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.hearthway.pump.engine.BolusMode;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.pump.engine.ResidualRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.source.MapConfigurationPropertySource;

class PumpRulesTests {

    private static PumpRules shipped() {
        return bound(Map.of());
    }

    private static PumpRules with(String setting, String value) {
        return bound(Map.of("hearthway.pump." + setting, value));
    }

    private static PumpRules bound(Map<String, String> settings) {
        return new Binder(new MapConfigurationPropertySource(settings)).bindOrCreate("hearthway.pump", PumpRules.class);
    }

    @Test
    void whatPracticeDiffersOnIsASetting() {
        assertThat(shipped().clinic()).isEqualTo(ClinicRules.usual());
        assertThat(with("effect-hours", "12").clinic().dose().effectHours()).isEqualTo(12);
        assertThat(with("residual-basis", "expected_residual")
                        .clinic()
                        .residual()
                        .basis())
                .isEqualTo(ResidualRules.Basis.EXPECTED_RESIDUAL);
        assertThat(with("bolus", "adds-to-basal").clinic().bolus()).isEqualTo(BolusMode.ADDS_TO_BASAL);
    }

    /** Usual upper limit between refills 180 days (Neuromodulation 2023, PubMed 38043050, gives no reason to go beyond). */
    @Test
    void aFillLastsAtMostAHundredAndEightyDays() {
        assertThat(shipped().lifeLimitDays()).isEqualTo(180);
        assertThatThrownBy(() -> with("life-limit-days", "181")).hasStackTraceContaining("1 to 180");
    }

    /** A children's hospital hand-out: some days before the alarm, 3 to 5; the upper bound is common practice, no source. */
    @ParameterizedTest
    @CsvSource({"2, false", "3, true", "5, true", "14, true", "15, false"})
    void theMarginBeforeTheAlarmKeepsItsBounds(int days, boolean allowed) {
        assertThat(shipped().marginDays()).isBetween(3, 5);
        if (allowed) {
            assertThat(with("margin-days", Integer.toString(days)).marginDays()).isEqualTo(days);
        } else {
            assertThatThrownBy(() -> with("margin-days", Integer.toString(days)))
                    .hasStackTraceContaining("3 to 14");
        }
    }
}
