package org.hearthway.stimulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.context.properties.bind.Bindable;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.source.MapConfigurationPropertySource;

class StimulatorRulesTests {

    private static StimulatorRules rules(String... settings) {
        var given = new java.util.HashMap<String, String>();
        for (var i = 0; i + 1 < settings.length; i += 2) {
            given.put("hearthway.stimulator." + settings[i], settings[i + 1]);
        }
        return new Binder(new MapConfigurationPropertySource(given))
                .bindOrCreate("hearthway.stimulator", Bindable.of(StimulatorRules.class));
    }

    /** Reference table DBS-W1: the first generators were empty after 13 months; the mean of 24 is the mistake. */
    @Test
    void looksAtAGeneratorAfterThirteenMonthsAndNeverLater() {
        assertThat(rules().firstCheckMonths()).isEqualTo(13);
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new StimulatorRules(24, 90, 10, 3, BigDecimal.TEN, new BigDecimal("0.1"), 250, 4000, 50))
                .withMessage("hearthway.stimulator.first-check-months must be 6 to 13");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "first-check-months=5",
                "every-days=181",
                "end-percent=51",
                "drop-times=1",
                "drop-percent=0",
                "drop-volts=1.01",
                "least-ohms=0",
                "most-ohms=999",
                "ohms-percent=9",
                "least-ohms=2001"
            })
    void refusesWhatIsOutOfBounds(String setting) {
        var parts = setting.split("=");
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> rules(parts[0], parts[1]))
                .rootCause()
                .hasMessageContaining("hearthway.stimulator." + parts[0]);
    }
}
