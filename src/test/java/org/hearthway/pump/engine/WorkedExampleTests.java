package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** The example of the package's own description, word for word. */
class WorkedExampleTests {

    @Test
    void doesWhatTheDescriptionSays() {
        var zone = ZoneId.of("America/New_York");
        var pump = PumpModel.programmable(
                Volume.millilitres("20"),
                Volume.millilitres("2"),
                Volume.millilitres("0.25"),
                new FlowRange(FlowRate.millilitresPerDay("0.048"), FlowRate.millilitresPerDay("24")),
                Period.ofYears(7));
        var strength = Concentration.microgramsPerMillilitre("500");
        var filled = Instant.parse("2026-01-15T15:00:00Z");

        var reservoir = Reservoir.filled(
                        pump,
                        Filling.of(filled, Volume.millilitres("20")),
                        Program.set(filled, zone, strength, Dosing.constant("100")))
                .then(Program.set(Instant.parse("2026-01-29T15:00:00Z"), zone, strength, Dosing.constant("110")));

        assertThat(reservoir.at(Instant.parse("2026-02-12T15:00:00Z")).rounded(2))
                .isEqualByComparingTo("14.12");

        // 15.2 mL above the alarm at 0.22 mL a day are 69.09 days, 83.09 with the 14 before (by hand)
        var forecast = RefillForecast.of(reservoir, RefillRules.usual(), zone, day -> true);
        assertThat(forecast.planningDay()).contains(LocalDate.parse("2026-04-08"));
        assertThat(forecast.latest()).isEqualTo("2026-04-03");
        assertThat(forecast.opens()).isEqualTo("2026-03-20");

        var visit = Instant.parse("2026-03-31T14:00:00Z");
        var residual = Residual.at(reservoir, visit, Volume.millilitres("9.5"), ResidualRules.usual());
        assertThat(residual.flagged()).isTrue();
        assertThat(residual.look()).isEqualTo(Residual.Look.MORE_LEFT);
    }
}
