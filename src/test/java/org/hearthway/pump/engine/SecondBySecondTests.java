package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Period;
import java.time.ZoneId;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Two changes of dose at odd minutes across a change of the clock, against a simulation that knows only seconds. */
class SecondBySecondTests {

    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    private static final double SECONDS_A_DAY = 86_400;
    private static final double FILL = 20;
    private static final double ALARM = 2;
    private static final double STRENGTH = 500;

    private static Instant at(int month, int day, int hour, int minute) {
        return LocalDateTime.of(2026, month, day, hour, minute).atZone(NEW_YORK).toInstant();
    }

    private static Program set(Instant from, String dose) {
        return Program.set(from, NEW_YORK, Concentration.microgramsPerMillilitre("500"), Dosing.constant(dose));
    }

    @Test
    void volumeAndAlarmAreThoseOfASimulationByTheSecond() {
        var filled = at(2, 27, 10, 7);
        var raised = at(3, 7, 23, 53);
        // seven minutes after New York's clocks were put forward
        var again = at(3, 8, 3, 7);
        var pump = PumpModel.programmable(
                Volume.millilitres("20"),
                Volume.millilitres("2"),
                Volume.millilitres("0.25"),
                new FlowRange(FlowRate.millilitresPerDay("0.048"), FlowRate.millilitresPerDay("24")),
                Period.ofYears(7));
        var reservoir = Reservoir.filled(pump, Filling.of(filled, Volume.millilitres("20")), set(filled, "110"))
                .then(set(raised, "121"))
                .then(set(again, "133.1"));

        var doses = new TreeMap<Instant, Double>();
        doses.put(filled, 110.0);
        doses.put(raised, 121.0);
        doses.put(again, 133.1);
        var now = filled;
        var left = FILL;
        var dose = 0.0;
        for (var second = 0; left > ALARM; second++) {
            now = filled.plusSeconds(second);
            dose = doses.getOrDefault(now, dose);
            left -= dose / STRENGTH / SECONDS_A_DAY;
            if (now.equals(raised) || now.equals(again) || second % 500_000 == 0) {
                assertThat(reservoir.at(now.plusSeconds(1)).forPlot()).isCloseTo(left, within(1e-6));
            }
        }

        var alarm = reservoir.alarm().orElseThrow().at();
        assertThat(Duration.between(alarm, now).abs()).isLessThanOrEqualTo(Duration.ofSeconds(2));
    }
}
