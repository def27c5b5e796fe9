package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * When a pump is to be refilled.
 *
 * @param alarm when the low-reservoir alarm sounds, if it ever does
 * @param empty when nothing is left, if that comes; for clinicians, never to plan by
 * @param planningDay the day of the alarm to plan by: never later than its local date, nor than the day of the
 *     print-out; empty without an alarm
 * @param printOut the day of the print-out against ours, if both are known
 * @param lifeEnds last day of the drug in the reservoir
 * @param decides what sets the window
 * @param opens first day of the window
 * @param latest last day of the window
 * @param cautions what a person should be told beside it
 * @param rules what it was planned by
 */
public record RefillForecast(
        Optional<Reservoir.Reached> alarm,
        Optional<Reservoir.Reached> empty,
        Optional<LocalDate> planningDay,
        Optional<PrintOutCheck> printOut,
        LocalDate lifeEnds,
        Limit decides,
        LocalDate opens,
        LocalDate latest,
        Set<Caution> cautions,
        RefillRules rules,
        Derivation how) {

    /** What sets the window. */
    public enum Limit {
        /** The alarm, less the margin. */
        ALARM,
        /** How long the label lets the drug stay. */
        LABEL_LIFE,
        /** The day that the pharmacy gave. */
        BEYOND_USE
    }

    /** What a person should be told beside the window. */
    public enum Caution {
        /** Counted back, the last day lies before the fill: the margin cannot be kept, or the drug was too old. */
        DUE_AT_ONCE,
        /** The clinic has no open day from the fill to the last day. */
        NO_OPEN_DAY,
        /** As programmed, the alarm is never reached. */
        NOTHING_GIVEN
    }

    public RefillForecast {
        cautions = Set.copyOf(cautions);
    }

    /**
     * Forecasts from what was filled and programmed.
     *
     * @param zone where the clinic is
     * @param open days on which it is open; the window is moved earlier to such a day, never later
     */
    public static RefillForecast of(Reservoir reservoir, RefillRules rules, ZoneId zone, Predicate<LocalDate> open) {
        return of(reservoir, Optional.empty(), rules, zone, open);
    }

    /**
     * The same with the alarm date of the device print-out: the earlier one stands.
     *
     * @param printed alarm date of the print-out, if there is one
     */
    public static RefillForecast of(
            Reservoir reservoir,
            Optional<LocalDate> printed,
            RefillRules rules,
            ZoneId zone,
            Predicate<LocalDate> open) {
        var working = new Derivation.Working();
        var alarm = reservoir.alarm();
        var ours = alarm.map(reached -> PlanningDay.of(reservoir, reached, zone, working));
        var printOut = ours.flatMap(day -> printed.map(theirs -> PrintOutCheck.of(day, theirs, rules)));
        printOut.ifPresent(check -> working.all(check.how()));
        var planning = printOut.map(PrintOutCheck::stands).or(() -> ours).or(() -> printed);
        var filled = reservoir.filling().at().atZone(zone).toLocalDate();
        var window = RefillWindow.of(planning, filled, reservoir.filling().beyondUse(), rules, open, working);
        var cautions = EnumSet.noneOf(Caution.class);
        cautions.addAll(window.cautions());
        if (alarm.isEmpty()) {
            cautions.add(Caution.NOTHING_GIVEN);
        }
        return new RefillForecast(
                alarm,
                reservoir.empty(),
                planning,
                printOut,
                window.lifeEnds(),
                window.decides(),
                window.opens(),
                window.latest(),
                cautions,
                rules,
                working.done());
    }
}
