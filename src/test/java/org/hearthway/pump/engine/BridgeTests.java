package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.pump.engine.Sample.NEW_YORK;
import static org.hearthway.pump.engine.Sample.catheter;
import static org.hearthway.pump.engine.Sample.dose;
import static org.hearthway.pump.engine.Sample.ml;
import static org.hearthway.pump.engine.Sample.newYork;
import static org.hearthway.pump.engine.Sample.pump;
import static org.hearthway.pump.engine.Sample.refused;
import static org.hearthway.pump.engine.Sample.strength;

import java.time.Duration;
import java.time.Period;
import java.util.Optional;
import org.hearthway.pump.engine.Catheter.Figure;
import org.junit.jupiter.api.Test;

class BridgeTests {

    private static final PumpModel PUMP = pump("20", "2");

    private static Bridge bridge(String old, String fresh) {
        return (Bridge) BridgePlan.of(PUMP, catheter(), strength(old), strength(fresh), dose("120"), 25);
    }

    private static double sum(Bridge bridge, boolean bridged, int from, int to) {
        return bridge.hours(to).subList(from, to).stream()
                .map(hour -> bridged ? hour.bridged() : hour.unbridged())
                .reduce(Mass.NONE, Mass::plus)
                .forPlot();
    }

    /** Reference examples ITB-W8 and ITB-W9, computed by script. */
    @Test
    void toAStrongerDrug() {
        var bridge = bridge("500", "2000");
        assertThat(bridge.deadVolume()).isEqualTo(ml("0.4"));
        assertThat(bridge.drug()).isEqualTo(Mass.micrograms("200"));
        assertThat(bridge.lasts()).isEqualTo(Elapsed.hours("40"));
        assertThat(bridge.during().perDay().rounded(4)).isEqualByComparingTo("0.24");
        assertThat(bridge.during().during(bridge.lasts())).isEqualTo(bridge.deadVolume());
        assertThat(bridge.afterwards().perDay().rounded(4)).isEqualByComparingTo("0.06");
        assertThat(bridge.without().received().rounded(4)).isEqualByComparingTo("30");
        assertThat(bridge.without().percent().rounded(4)).isEqualByComparingTo("25");
        assertThat(bridge.without().lasts().inDays().rounded(3)).isEqualByComparingTo("6.667");
    }

    /** Reference example ITB-W10, computed by script: reversed, 25 percent become 400. */
    @Test
    void toAWeakerDrug() {
        var bridge = bridge("2000", "500");
        assertThat(bridge.drug().rounded(4)).isEqualByComparingTo("800");
        assertThat(bridge.lasts()).isEqualTo(Elapsed.hours("160"));
        assertThat(bridge.during().perDay().rounded(4)).isEqualByComparingTo("0.06");
        assertThat(bridge.without().received().rounded(4)).isEqualByComparingTo("480");
        assertThat(bridge.without().percent().rounded(4)).isEqualByComparingTo("400");
        assertThat(bridge.without().lasts().inDays().rounded(3)).isEqualByComparingTo("1.667");
    }

    /** Reference ITB-W9 and rule P6: 0.30 mL for 0.40 gives four times the rate for the last 10 hours, 200 mcg for 50. */
    @Test
    void aWrongDeadVolumeIsReckonedThrough() {
        var bridge = bridge("500", "2000");
        var less = bridge.wrong().get(0);
        assertThat(less.really()).isEqualTo(ml("0.3"));
        assertThat(less.tooMuch()).isTrue();
        assertThat(less.lasts()).isEqualTo(Elapsed.hours("10"));
        assertThat(less.received()).isEqualTo(Mass.micrograms("200"));
        assertThat(less.wanted()).isEqualTo(Mass.micrograms("50"));
        assertThat(less.apart()).isEqualTo(Mass.micrograms("150"));
        assertThat(less.how().lines())
                .extracting(line ->
                        line.numbers(shown -> ((Quantity) shown).rounded(4).toPlainString()))
                .containsExactly("(0.4 - 0.3) / 0.24 × 24", "0.24 × 10 / 24 × 2000", "120 × 10 / 24");
        var more = bridge.wrong().get(1);
        assertThat(more.tooMuch()).isFalse();
        assertThat(more.lasts()).isEqualTo(Elapsed.hours("40"));
        assertThat(more.received()).isEqualTo(Mass.micrograms("50"));
        assertThat(more.wanted()).isEqualTo(Mass.micrograms("200"));
        var down = bridge("2000", "500").wrong();
        assertThat(down.get(0).tooMuch()).isFalse();
        assertThat(down.get(1).tooMuch()).isTrue();
        assertThat(down.get(1).lasts()).isEqualTo(Elapsed.hours("10"));
    }

    @Test
    void withABridgeEveryHourGivesTheSame() {
        for (var bridge : new Bridge[] {bridge("500", "2000"), bridge("2000", "500")}) {
            assertThat(bridge.hours(200))
                    .allSatisfy(hour -> assertThat(hour.bridged().rounded(6)).isEqualByComparingTo("5"));
        }
    }

    @Test
    void withoutABridgeTheOldDrugComesAtTheNewFlow() {
        var up = bridge("500", "2000");
        assertThat(up.hours(161).get(159).unbridged().rounded(4)).isEqualByComparingTo("1.25");
        assertThat(up.hours(161).get(160).unbridged().rounded(4)).isEqualByComparingTo("5");
        assertThat(sum(bridge("2000", "500"), false, 0, 40)).isEqualTo(800);
    }

    /** The hours of a wrong dead volume add up to what the sensitivity says. */
    @Test
    void theHoursAgreeWithTheReckoning() {
        var bridge = bridge("500", "2000");
        var hours = bridge.hours(60, ml("0.3"), strength("2000"));
        assertThat(hours.get(29).bridged().rounded(4)).isEqualByComparingTo("5");
        assertThat(hours.get(30).bridged().rounded(4)).isEqualByComparingTo("20");
        assertThat(hours.get(39).bridged().rounded(4)).isEqualByComparingTo("20");
        assertThat(hours.get(40).bridged().rounded(4)).isEqualByComparingTo("5");
    }

    /** Rule P6 of the reference: no number without the implanted length. */
    @Test
    void withoutTheImplantedLengthThereIsNoNumber() {
        var unknown = new Catheter(Optional.empty(), catheter().bore());
        assertThat(BridgePlan.of(PUMP, unknown, strength("500"), strength("2000"), dose("120"), 25))
                .isInstanceOfSatisfying(
                        BridgePlan.Missing.class,
                        missing -> assertThat(missing.figures()).containsExactly(Figure.IMPLANTED_LENGTH));
        assertThat(BridgePlan.of(
                        PUMP,
                        new Catheter(Optional.empty(), Optional.empty()),
                        strength("500"),
                        strength("2000"),
                        dose("120"),
                        25))
                .isInstanceOfSatisfying(
                        BridgePlan.Missing.class,
                        missing -> assertThat(missing.figures()).hasSize(2));
        var primed = Priming.after(Priming.Change.PUMP, PUMP, unknown, strength("500"), ClinicRules.usual());
        assertThat(primed.afterImplant()).isEmpty();
        assertThat(primed.missing()).containsExactly(Figure.IMPLANTED_LENGTH);
    }

    @Test
    void theSameStrengthNeedsNone() {
        assertThat(BridgePlan.of(PUMP, catheter(), strength("500"), strength("500.0"), dose("120"), 25))
                .isInstanceOf(BridgePlan.NotNeeded.class);
    }

    /** Rule P10 of the reference. */
    @Test
    void aPumpOfFixedFlowIsNotBridgedByProgramming() {
        var flow = FlowRate.millilitresPerDay("0.5");
        var fixed = PumpModel.fixedRate(ml("35"), ml("3"), ml("0.25"), flow, Period.ofYears(8));
        assertThat(BridgePlan.of(fixed, catheter(), strength("1000"), strength("500"), dose("250"), 25))
                .isInstanceOfSatisfying(BridgePlan.NotProgrammable.class, plan -> {
                    assertThat(plan.meanwhile().received().rounded(3)).isEqualByComparingTo("500");
                    assertThat(plan.meanwhile().percent().rounded(3)).isEqualByComparingTo("200");
                    assertThat(plan.meanwhile().lasts().exact())
                            .isEqualTo(Elapsed.hours("19.2").exact());
                });
    }

    @Test
    void saysWhenThePumpCannotDeliverItsFlows() {
        assertThat(bridge("500", "2000").deliverable()).isTrue();
        var slow = (Bridge) BridgePlan.of(PUMP, catheter(), strength("500"), strength("2000"), dose("40"), 25);
        assertThat(slow.deliverable()).isFalse();
    }

    /** The bridge takes its own volume from the reservoir; after it, the new flow goes on. */
    @Test
    void aBridgeStandsInTheHistoryAsTwoProgrammings() {
        var at = newYork("2026-05-04T09:00");
        var programs = bridge("500", "2000").programs(at, NEW_YORK, Dosing.constant("120"));
        var reservoir = Reservoir.filled(PUMP, Filling.of(at, ml("20")), programs.get(0))
                .then(programs.get(1));
        assertThat(reservoir.at(at.plus(Duration.ofHours(40)))).isEqualTo(ml("19.6"));
        assertThat(reservoir.alarm().orElseThrow().sinceFill().inDays().exact())
                .isEqualTo(Elapsed.of(Duration.ofHours(40 + 24L * 17_600 / 60))
                        .inDays()
                        .exact());
    }

    /** Mass is kept: 2 mL of 500 and 18 mL of 2000 hold 37000 mcg. */
    @Test
    void whatWasLeftDilutesTheNewDrug() {
        var mixture = Mixture.of(ml("2"), strength("500"), ml("18"), strength("2000"));
        assertThat(mixture.volume()).isEqualTo(ml("20"));
        assertThat(mixture.strength()).isEqualTo(strength("1850"));
        assertThat(mixture.percentOf(strength("2000")).rounded(4)).isEqualByComparingTo("92.5");
        assertThat(Mixture.of(ml("0"), strength("500"), ml("18"), strength("2000"))
                        .strength())
                .isEqualTo(strength("2000"));
        refused("added", "nothing-added", () -> Mixture.of(ml("0"), strength("500"), ml("0"), strength("2000")));
    }

    /** Reference ITB-26 (best-practice abstract 2015; Boster 2016) and ITB-W8 for the numbers. */
    @Test
    void tubingIsPrimedBeforeImplantAndTheCatheterAfterwards() {
        var rules = ClinicRules.usual();
        var fresh = Priming.after(Priming.Change.PUMP, PUMP, catheter(), strength("500"), rules);
        assertThat(fresh.beforeImplant()).isEqualTo(ml("0.25"));
        assertThat(fresh.afterImplant()).contains(ml("0.15"));
        assertThat(fresh.drugAfterImplant()).contains(Mass.micrograms("75"));
        var at = newYork("2026-05-04T09:00");
        assertThat(fresh.watchUntil(at)).isEqualTo(at.plus(Duration.ofHours(8)));
        var changed = Priming.after(Priming.Change.CATHETER, PUMP, catheter(), strength("500"), rules);
        assertThat(changed.beforeImplant()).isEqualTo(Volume.NONE);
        assertThat(changed.afterImplant()).contains(ml("0.15"));
    }

    @Test
    void everyLineOfItCanBeFollowed() {
        assertThat(bridge("500", "2000").how().lines())
                .extracting(line -> line.symbols() + " = "
                        + line.numbers(shown -> ((Quantity) shown).rounded(4).toPlainString()))
                .contains(
                        "V0 = Vt + l × vl = 0.25 + 60 × 0.0025",
                        "M = V0 × C1 = 0.4 × 500",
                        "h = M / D × 24 = 200 / 120 × 24",
                        "R = D × C1 / C2 = 120 × 500 / 2000");
    }
}
