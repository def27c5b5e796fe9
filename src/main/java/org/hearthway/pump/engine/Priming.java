package org.hearthway.pump.engine;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is primed after an implant or a change of catheter.
 *
 * @param beforeImplant tubing of a new pump, primed before it is implanted; nothing when the pump stays
 * @param afterImplant the catheter alone, primed after implant; empty when a figure is missing
 * @param drugAfterImplant drug in it
 * @param missing figures without which no number is told
 * @param watch for so long at least the child is watched
 */
public record Priming(
        Volume beforeImplant,
        Optional<Volume> afterImplant,
        Optional<Mass> drugAfterImplant,
        Set<Catheter.Figure> missing,
        Elapsed watch,
        Derivation how) {

    /** What is new. */
    public enum Change {
        /** The pump, the catheter stays or is new as well. */
        PUMP,
        /** The catheter alone. */
        CATHETER
    }

    public Priming {
        missing = Set.copyOf(missing);
    }

    /** Volumes for a change. */
    public static Priming after(
            Change change, PumpModel pump, Catheter catheter, Concentration strength, ClinicRules rules) {
        var working = new Derivation.Working();
        var volume = catheter.volume();
        volume.ifPresent(inside -> working.line(
                Formula.CATHETER_VOLUME,
                Symbol.VOLUME,
                inside,
                Symbol.LENGTH.is(catheter.implanted().orElseThrow()),
                Symbol.PER_LENGTH.is(catheter.bore().orElseThrow())));
        var drug = volume.map(inside -> working.line(
                Formula.DRUG_IN,
                Symbol.PART,
                inside.at(strength),
                Symbol.VOLUME.is(inside),
                Symbol.STRENGTH.is(strength)));
        return new Priming(
                change == Change.PUMP ? pump.tubing() : Volume.NONE,
                volume,
                drug,
                catheter.missing(),
                Elapsed.hours(BigFraction.of(rules.primingHours())),
                working.done());
    }

    /** Until when a child is watched at least. */
    public Instant watchUntil(Instant primed) {
        return watch.after(primed);
    }
}
