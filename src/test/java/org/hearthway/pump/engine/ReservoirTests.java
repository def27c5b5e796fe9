package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.pump.engine.Sample.filled;
import static org.hearthway.pump.engine.Sample.ml;
import static org.hearthway.pump.engine.Sample.newYork;
import static org.hearthway.pump.engine.Sample.program;
import static org.hearthway.pump.engine.Sample.pump;
import static org.hearthway.pump.engine.Sample.refused;

import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import org.junit.jupiter.api.Test;

class ReservoirTests {

    private static final Instant FILLED = newYork("2026-05-04T09:00");

    private static Instant after(int days) {
        return FILLED.plus(Duration.ofDays(days));
    }

    private static Reservoir threeDoses() {
        return filled(pump("20", "2"), FILLED, "500", Dosing.constant("100"))
                .then(program(after(14), "500", Dosing.constant("115")))
                .then(program(after(35), "500", Dosing.constant("132")));
    }

    /** Reference example ITB-W4, computed by script; bug value 8.12 (the latest dose for all 45 days). */
    @Test
    void everyDoseCountsForItsOwnDays() {
        assertThat(threeDoses().at(after(45)).rounded(6))
                .isEqualByComparingTo("9.73")
                .isNotEqualByComparingTo("8.12");
        var left = threeDoses().leftToAlarm(after(45)).orElseThrow();
        assertThat(left.inDays().rounded(3)).isEqualByComparingTo("29.28");
        assertThat(left.wholeDays()).isEqualTo(29);
    }

    @Test
    void theForecastIsTheSameFromEveryNode() {
        for (var node : threeDoses().nodes()) {
            var seen = threeDoses().seenFrom(node.at());
            assertThat(seen.alarm()).isEqualTo(threeDoses().alarm());
            assertThat(seen.empty()).isEqualTo(threeDoses().empty());
        }
    }

    @Test
    void atTheMomentOfTheFillNothingIsGone() {
        assertThat(threeDoses().at(FILLED)).isEqualTo(ml("20"));
        refused("at", "before-fill", () -> threeDoses().at(FILLED.minusSeconds(1)));
    }

    @Test
    void ofTwoProgrammingsAtTheSameMinuteTheLaterCounts() {
        var reservoir = filled(pump("20", "2"), FILLED, "500", Dosing.constant("100"))
                .then(program(after(10), "500", Dosing.constant("1000")))
                .then(program(after(10), "500", Dosing.constant("100")));
        assertThat(reservoir.at(after(20))).isEqualTo(ml("16"));
        assertThat(reservoir.programAt(after(10)).dosing()).isEqualTo(Dosing.constant("100"));
    }

    @Test
    void aFillAtTheAlarmVolumeSoundsAtOnce() {
        for (var volume : new String[] {"2", "1.5", "0"}) {
            var reservoir = Reservoir.filled(
                    pump("20", "2"), Filling.of(FILLED, ml(volume)), program(FILLED, "500", Dosing.constant("100")));
            assertThat(reservoir.alarm().orElseThrow()).isEqualTo(new Reservoir.Reached(FILLED, Elapsed.NONE));
            assertThat(reservoir.leftToAlarm(after(3))).contains(Elapsed.NONE);
        }
    }

    @Test
    void aStoppedPumpGivesNothingUntilItRunsAgain() {
        var reservoir = filled(pump("20", "2"), FILLED, "500", Dosing.constant("100"))
                .then(program(after(10), "500", Dosing.stopped()))
                .then(program(after(15), "500", Dosing.constant("100")));
        assertThat(reservoir.at(after(10))).isEqualTo(reservoir.at(after(15))).isEqualTo(ml("18"));
        assertThat(reservoir.alarm().orElseThrow().sinceFill()).isEqualTo(Elapsed.of(Duration.ofDays(95)));
    }

    @Test
    void aPumpThatIsStoppedForGoodNeverSounds() {
        var reservoir = threeDoses().then(program(after(40), "500", Dosing.stopped()));
        assertThat(reservoir.alarm()).isEmpty();
        assertThat(reservoir.leftToEmpty(after(50))).isEmpty();
    }

    @Test
    void whatIsEmptyStaysEmpty() {
        assertThat(threeDoses().at(after(400))).isEqualTo(Volume.NONE);
        assertThat(threeDoses()
                        .then(program(after(400), "500", Dosing.constant("5")))
                        .empty())
                .isEqualTo(threeDoses().empty());
    }

    @Test
    void anAlarmThatIsReachedExactlyAtAProgrammingIsReachedThen() {
        var reservoir = filled(pump("20", "2"), FILLED, "500", Dosing.constant("100"))
                .then(program(after(90), "500", Dosing.stopped()));
        assertThat(reservoir.alarm().orElseThrow().at()).isEqualTo(after(90));
    }

    /** A microgram more in an hour is a step; the same total is the same date at whole days. */
    @Test
    void theLowestRateLastsForYears() {
        var reservoir = filled(pump("40", "2"), FILLED, "5000", Dosing.constant("5"));
        assertThat(reservoir.alarm().orElseThrow().sinceFill().wholeDays()).isEqualTo(38_000);
    }

    /** A refill that was missed: 18 mL at 0.2 mL a day to the alarm, 20 mL until nothing is left. */
    @Test
    void tellsHowLongIsLeft() {
        var reservoir = filled(pump("20", "2"), FILLED, "500", Dosing.constant("100"));
        var soon = TimeLeft.of(reservoir, after(80));
        assertThat(soon.volume()).isEqualTo(ml("4"));
        assertThat(soon.toAlarm()).contains(Elapsed.of(Duration.ofDays(10)));
        assertThat(soon.toEmpty()).contains(Elapsed.of(Duration.ofDays(20)));
        var late = TimeLeft.of(reservoir, after(95));
        assertThat(late.toAlarm()).contains(Elapsed.NONE);
        assertThat(late.toEmpty()).contains(Elapsed.of(Duration.ofDays(5)));
        assertThat(TimeLeft.of(reservoir, after(200)).toEmpty()).contains(Elapsed.NONE);
        assertThat(soon.how().lines())
                .extracting(line -> line.symbols() + " = "
                        + line.numbers(shown -> ((Quantity) shown).rounded(4).toPlainString()))
                .contains(
                        "U = D × t / C = 100 × 80 / 500",
                        "V = max(0, V - U) = max(0, 20 - 16)",
                        "t = (V - Va) / Vd = (4 - 2) / 0.2",
                        "t = V / Vd = 4 / 0.2");
    }

    @Test
    void refusesWhatCannotBe() {
        refused(
                "volume",
                "overfilled",
                () -> Reservoir.filled(
                        pump("20", "2"),
                        Filling.of(FILLED, ml("20.1")),
                        program(FILLED, "500", Dosing.constant("100"))));
        refused(
                "from",
                "program-late",
                () -> Reservoir.filled(
                        pump("20", "2"),
                        Filling.of(FILLED, ml("20")),
                        program(after(1), "500", Dosing.constant("100"))));
        refused("from", "program-early", () -> threeDoses().then(program(after(34), "500", Dosing.stopped())));
    }

    /** Rule P10 of the reference: the dose of a pump of fixed flow is strength times flow, and steps are refused. */
    @Test
    void aPumpOfFixedFlowTakesNoSteps() {
        var flow = FlowRate.millilitresPerDay("0.5");
        var fixed = PumpModel.fixedRate(ml("35"), ml("3"), ml("0.2"), flow, Period.ofYears(8));
        var reservoir =
                Reservoir.filled(fixed, Filling.of(FILLED, ml("35")), program(FILLED, "500", Dosing.fixedFlow(flow)));
        assertThat(reservoir.alarm().orElseThrow().sinceFill()).isEqualTo(Elapsed.of(Duration.ofDays(64)));
        assertThat(Conversion.ofFlow(flow, Sample.strength("500")).dose()).isEqualTo(Sample.dose("250"));
        refused("dosing", "fixed-rate", () -> reservoir.then(program(after(3), "500", Dosing.constant("250"))));
        var stronger = reservoir.then(program(after(3), "2000", Dosing.fixedFlow(flow)));
        assertThat(stronger.alarm()).isEqualTo(reservoir.alarm());
        assertThat(stronger.programAt(after(4)).rate(after(4)).exact())
                .isEqualTo(Sample.dose("1000").exact());
    }
}
