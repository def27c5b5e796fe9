package org.hearthway.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.source.MapConfigurationPropertySource;

class PumpRulesTests {

    private static PumpRules shipped() {
        return new Binder(new MapConfigurationPropertySource(Map.of())).bindOrCreate("hearthway.pump", PumpRules.class);
    }

    /** Usual upper limit between refills 180 days (Neuromodulation 2023, PubMed 38043050, gives no reason to go beyond). */
    @Test
    void aFillLastsAtMostAHundredAndEightyDays() {
        assertThat(shipped().lifeLimitDays()).isEqualTo(180);
        assertThatThrownBy(() -> new PumpRules(5, 181)).hasMessageContaining("1 to 180");
    }

    /** A children's hospital hand-out: some days before the alarm, 3 to 5; the upper bound is common practice, no source. */
    @ParameterizedTest
    @CsvSource({"2, false", "3, true", "5, true", "14, true", "15, false"})
    void theMarginBeforeTheAlarmKeepsItsBounds(int days, boolean allowed) {
        assertThat(shipped().marginDays()).isBetween(3, 5);
        if (allowed) {
            assertThat(new PumpRules(days, 180).marginDays()).isEqualTo(days);
        } else {
            assertThatThrownBy(() -> new PumpRules(days, 180)).hasMessageContaining("3 to 14");
        }
    }
}
