package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Period;
import java.time.ZoneId;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.hearthway.base.Invalid;

/** Made-up pumps and short ways to say things, for tests. */
final class Sample {

    static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    private Sample() {}

    static PumpModel pump(String reservoir, String alarm) {
        return PumpModel.programmable(
                ml(reservoir),
                ml(alarm),
                ml("0.25"),
                new FlowRange(FlowRate.millilitresPerDay("0.024"), FlowRate.millilitresPerDay("24")),
                Period.ofYears(7));
    }

    static Catheter catheter() {
        return Catheter.of(Length.centimetres("60"), VolumePerLength.millilitresPerCentimetre("0.0025"));
    }

    static Volume ml(String millilitres) {
        return Volume.millilitres(millilitres);
    }

    static Concentration strength(String amount) {
        return Concentration.microgramsPerMillilitre(amount);
    }

    static DailyDose dose(String amount) {
        return DailyDose.microgramsPerDay(amount);
    }

    static Instant local(String time, ZoneId zone) {
        return LocalDateTime.parse(time).atZone(zone).toInstant();
    }

    static Instant newYork(String time) {
        return local(time, NEW_YORK);
    }

    static Program program(Instant from, String strength, Dosing dosing) {
        return Program.set(from, NEW_YORK, strength(strength), dosing);
    }

    static Reservoir filled(PumpModel pump, Instant at, String strength, Dosing dosing) {
        return Reservoir.filled(pump, Filling.of(at, pump.reservoir()), program(at, strength, dosing));
    }

    static void refused(String field, String key, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> org.assertj.core.api.Assertions.assertThat(invalid.problems())
                                .anySatisfy(problem -> {
                                    org.assertj.core.api.Assertions.assertThat(problem.field())
                                            .isEqualTo(field);
                                    org.assertj.core.api.Assertions.assertThat(problem.key())
                                            .isEqualTo("pump.problem." + key);
                                }));
    }
}
