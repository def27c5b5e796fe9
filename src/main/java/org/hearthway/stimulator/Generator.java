package org.hearthway.stimulator;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.stimulator.engine.DropRule.Drop;
import org.hearthway.stimulator.engine.ImpedanceRule.Unusual;
import org.hearthway.stimulator.engine.Recharging;
import org.hearthway.stimulator.engine.Window;

/**
 * A generator in the body, for the team: what is known of it and what its readings say.
 *
 * @param serial as it stands on the card
 * @param implanted when it came in
 * @param about of what kind it is
 * @param readings newest first
 * @param counted from the confirmed readings alone: what a family may be told
 * @param withUnchecked from all readings, confirmed or not; of the two the earlier day matters to the team
 * @param nextReading the day by which the battery should be read next
 * @param drop a sudden fall at the newest reading
 * @param unusual impedances of the newest reading
 * @param recharging the rhythm of charging and the last known charge; of one that is charged
 */
public record Generator(
        String serial,
        LocalDate implanted,
        About about,
        List<Reading> readings,
        Window counted,
        Window withUnchecked,
        Optional<LocalDate> nextReading,
        Optional<Drop> drop,
        List<Unusual> unusual,
        Optional<Recharging> recharging) {

    public Generator {
        readings = List.copyOf(readings);
        unusual = List.copyOf(unusual);
    }

    /** The reading that was taken last. */
    public Optional<Reading> newest() {
        return readings.stream().findFirst();
    }

    /** The newest reading that a second person confirmed. */
    public Optional<Reading> newestChecked() {
        return readings.stream().filter(reading -> reading.check().isPresent()).findFirst();
    }

    /** The window that opens earlier, with the unchecked readings or without. */
    public Window window() {
        return earlier(counted, withUnchecked);
    }

    /** Of two windows the one that opens earlier; the first where both open on one day. */
    public static Window earlier(Window one, Window other) {
        return other.opens()
                .filter(sooner -> one.opens()
                        .filter(day -> !sooner.day().isBefore(day.day()))
                        .isEmpty())
                .map(sooner -> other)
                .orElse(one);
    }

    /** How many days late the last charge was when the newest reading was taken; 0 when it was not, or none is known. */
    public long chargeLate() {
        return newest().flatMap(reading ->
                        recharging.map(known -> known.lateOn(reading.data().day())))
                .orElse(0L);
    }

    /**
     * Of what kind it is.
     *
     * @param charge whether it is charged at home
     * @param lifeYears the life that the label states, 1 to 30 years; of one that is charged
     * @param endVolts the voltage at which it is to be replaced, 1 to 5; of one that tells volts
     * @param version 0 while nobody entered anything
     */
    public record About(Charge charge, Optional<Integer> lifeYears, Optional<BigDecimal> endVolts, long version) {

        /** Nothing was entered. */
        public static final About NOTHING = new About(Charge.NOT_SAID, Optional.empty(), Optional.empty(), 0);
    }
}
