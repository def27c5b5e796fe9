package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The days on which a pump is to be refilled, from our forecast and the print-out: of two alarm dates the earlier stands.
 *
 * @param filled local day of the fill
 * @param alarm the alarm date that stands; empty when neither is known, or nothing is being given
 * @param printOut ours against the print-out, when both are known
 * @param marginDays kept before the alarm
 * @param lifeEnds last day of the drug in the reservoir
 * @param opens first day of the window
 * @param day last day of the window, an open day of the clinic if there is one since the fill
 * @param decides what sets the last day
 */
public record RefillWindow(
        LocalDate filled,
        Optional<LocalDate> alarm,
        Optional<PrintOutCheck> printOut,
        int marginDays,
        LocalDate lifeEnds,
        LocalDate opens,
        LocalDate day,
        RefillForecast.Limit decides) {

    /**
     * Takes the earlier of everything.
     *
     * @param ours day of the alarm by our forecast
     * @param printed day of the alarm by the print-out
     * @param beyondUse last day of the drug of this fill, if the pharmacy gave one
     * @param open days on which the clinic is open; the window is moved earlier to such a day, never later
     */
    public static RefillWindow of(
            LocalDate filled,
            Optional<LocalDate> ours,
            Optional<LocalDate> printed,
            Optional<LocalDate> beyondUse,
            RefillRules rules,
            Predicate<LocalDate> open) {
        var alarm = earlier(ours, printed);
        var byLabel = filled.plusDays(rules.lifeDays());
        var life = beyondUse.filter(byLabel::isAfter).orElse(byLabel);
        var byAlarm = alarm.map(day -> day.minusDays(rules.marginDays())).filter(day -> !day.isAfter(life));
        var wanted = byAlarm.orElse(life);
        var possible = wanted.isBefore(filled) ? filled : wanted;
        var day = OpenDays.earlier(possible, filled, open).orElse(possible);
        var first = day.minusDays(rules.windowDays());
        var opens = first.isBefore(filled) ? filled : first;
        return new RefillWindow(
                filled,
                alarm,
                ours.flatMap(own -> printed.map(print -> PrintOutCheck.of(own, print, rules))),
                rules.marginDays(),
                life,
                OpenDays.earlier(opens, filled, open).orElse(opens),
                day,
                byAlarm.isPresent()
                        ? RefillForecast.Limit.ALARM
                        : life.equals(byLabel) ? RefillForecast.Limit.LABEL_LIFE : RefillForecast.Limit.BEYOND_USE);
    }

    private static Optional<LocalDate> earlier(Optional<LocalDate> ours, Optional<LocalDate> printed) {
        return printed.filter(print -> !ours.filter(print::isAfter).isPresent()).or(() -> ours);
    }

    /** Whether a refill on a day would keep it: after the last fill, and not later than its last day. */
    public boolean isKeptOn(LocalDate visit) {
        return visit.isAfter(filled) && !visit.isAfter(day);
    }

    /** Whether the drug's life in the reservoir, not the alarm, sets the day. */
    public boolean lifeDecides() {
        return decides != RefillForecast.Limit.ALARM;
    }
}
