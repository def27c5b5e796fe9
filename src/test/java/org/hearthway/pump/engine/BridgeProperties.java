package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds for every change of strength; another way to the same hours. */
class BridgeProperties {

    private static final PumpModel PUMP = Sample.pump("20", "2");

    private static Bridge bridge(int old, int fresh, int dose, int length) {
        var catheter = Catheter.of(
                Length.centimetres(String.valueOf(length)), VolumePerLength.millilitresPerCentimetre("0.0025"));
        return Bridge.of(
                PUMP,
                catheter,
                Sample.strength(String.valueOf(old)),
                Sample.strength(String.valueOf(fresh)),
                Sample.dose(String.valueOf(dose)),
                25);
    }

    @Property(tries = 60)
    void aBridgeWithTheRightVolumeGivesTheDoseInEveryHour(
            @ForAll @IntRange(min = 50, max = 5000) int old,
            @ForAll @IntRange(min = 50, max = 5000) int fresh,
            @ForAll @IntRange(min = 5, max = 2000) int dose,
            @ForAll @IntRange(min = 10, max = 150) int length) {
        var bridge = bridge(old, fresh, dose, length);
        assertThat(bridge.hours(30))
                .allSatisfy(hour -> assertThat(hour.bridged().exact().multiply(24))
                        .isEqualTo(Sample.dose(String.valueOf(dose)).exact()));
    }

    @Property(tries = 60)
    void reversedStrengthsReverseThePercentage(
            @ForAll @IntRange(min = 50, max = 5000) int old, @ForAll @IntRange(min = 50, max = 5000) int fresh) {
        var there = bridge(old, fresh, 100, 60).without().percent().exact();
        var back = bridge(fresh, old, 100, 60).without().percent().exact();
        assertThat(there.multiply(back)).isEqualTo(Exact.of(new java.math.BigDecimal("10000")));
    }

    /** Another way: small parcels pushed through the catheter one after the other, in binary numbers. */
    @Property(tries = 25)
    void theHoursAreThoseOfParcelsPushedThrough(
            @ForAll @IntRange(min = 100, max = 4000) int old,
            @ForAll @IntRange(min = 100, max = 4000) int fresh,
            @ForAll @IntRange(min = 20, max = 1000) int dose,
            @ForAll @IntRange(min = 10, max = 150) int length,
            @ForAll @IntRange(min = 60, max = 140) int reallyPercent) {
        var bridge = bridge(old, fresh, dose, length);
        var dead = 0.25 + length * 0.0025;
        var really = dead * reallyPercent / 100;
        var hours = bridge.hours(
                48,
                new Volume(bridge.deadVolume().exact().multiply(reallyPercent).divide(100)),
                Sample.strength(String.valueOf(fresh)));
        var bridgeHours = dead * old / dose * 24;
        var pushed = 0.0;
        for (var hour : hours) {
            var received = 0.0;
            for (var second = 0; second < 3600; second++) {
                var at = hour.hour() + (second + 0.5) / 3600;
                var parcel = dose / (at < bridgeHours ? (double) old : fresh) / 86_400;
                received += parcel * (pushed + parcel / 2 < really ? old : fresh);
                pushed += parcel;
            }
            // a parcel at the border may be of the other drug, and one may be of the other flow
            var parcels = 2.0 * dose / Math.min(old, fresh) / 86_400 * Math.max(old, fresh);
            assertThat(hour.bridged().forPlot()).isCloseTo(received, within(parcels + 1e-6));
        }
    }
}
