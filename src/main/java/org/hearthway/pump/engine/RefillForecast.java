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
 * @param planningDay the day of the alarm to plan by, never later than its local date; empty without an alarm
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
        /** Nothing is being given. */
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
        var working = new Derivation.Working();
        var cautions = EnumSet.noneOf(Caution.class);
        var filled = reservoir.filling().at().atZone(zone).toLocalDate();
        var first = Symbol.FIRST_DAY.is(new Shown.Day(filled));
        var alarm = reservoir.alarm();
        if (alarm.isEmpty()) {
            cautions.add(Caution.NOTHING_GIVEN);
        }
        var planning = alarm.map(reached -> PlanningDay.of(reservoir, reached, zone, working));
        var life = life(reservoir.filling(), filled, rules, working);
        var byAlarm = planning.map(day -> day.minusDays(rules.marginDays()));
        var byLife = byAlarm.map(life::isBefore).orElse(true);
        var wanted = byLife ? life : byAlarm.orElse(life);
        var lifeDay = Symbol.LIFE_DAY.is(new Shown.Day(life));
        planning.ifPresentOrElse(
                day -> working.line(
                        Formula.LATEST,
                        Symbol.LATEST_ANY,
                        new Shown.Day(wanted),
                        Symbol.PLANNING_DAY.is(new Shown.Day(day)),
                        Symbol.SPAN.is(Amount.count(rules.marginDays(), Unit.DAYS)),
                        lifeDay),
                () -> working.line(Formula.LATEST_BY_LIFE, Symbol.LATEST_ANY, new Shown.Day(wanted), lifeDay));
        if (wanted.isBefore(filled)) {
            cautions.add(Caution.DUE_AT_ONCE);
        }
        var possible = wanted.isBefore(filled) ? filled : wanted;
        var snapped = OpenDays.earlier(possible, filled, open);
        if (snapped.isEmpty()) {
            cautions.add(Caution.NO_OPEN_DAY);
        }
        var latest = snapped.orElse(possible);
        working.line(
                Formula.OPEN_DAY, Symbol.LATEST, new Shown.Day(latest), Symbol.LATEST_ANY.is(new Shown.Day(possible)));
        var opens = opens(latest, filled, rules, open);
        working.line(
                Formula.OPENS,
                Symbol.OPENS,
                new Shown.Day(opens),
                first,
                Symbol.LATEST.is(new Shown.Day(latest)),
                Symbol.SPAN.is(Amount.count(rules.windowDays(), Unit.DAYS)));
        var limit = byLife ? lifeLimit(reservoir.filling(), filled, rules) : Limit.ALARM;
        return new RefillForecast(
                alarm, reservoir.empty(), planning, life, limit, opens, latest, cautions, rules, working.done());
    }

    private static LocalDate life(Filling filling, LocalDate filled, RefillRules rules, Derivation.Working working) {
        var byLabel = filled.plusDays(rules.lifeDays());
        var first = Symbol.FIRST_DAY.is(new Shown.Day(filled));
        var span = Symbol.SPAN.is(Amount.count(rules.lifeDays(), Unit.DAYS));
        if (filling.beyondUse().isEmpty()) {
            working.line(Formula.LIFE_DAY, Symbol.LIFE_DAY, new Shown.Day(byLabel), first, span);
            return byLabel;
        }
        var own = filling.beyondUse().get();
        var life = own.isBefore(byLabel) ? own : byLabel;
        working.line(
                Formula.LIFE_DAY_OF_BOTH,
                Symbol.LIFE_DAY,
                new Shown.Day(life),
                first,
                span,
                Symbol.END.is(new Shown.Day(own)));
        return life;
    }

    private static Limit lifeLimit(Filling filling, LocalDate filled, RefillRules rules) {
        var byLabel = filled.plusDays(rules.lifeDays());
        return filling.beyondUse().map(byLabel::isAfter).orElse(false) ? Limit.BEYOND_USE : Limit.LABEL_LIFE;
    }

    private static LocalDate opens(LocalDate latest, LocalDate filled, RefillRules rules, Predicate<LocalDate> open) {
        var wanted = latest.minusDays(rules.windowDays());
        var possible = wanted.isBefore(filled) ? filled : wanted;
        return OpenDays.earlier(possible, filled, open).orElse(possible);
    }
}
