package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The days on which a refill is planned: never none, never before the fill, moved to open days only to be earlier. */
record RefillWindow(
        LocalDate lifeEnds,
        RefillForecast.Limit decides,
        LocalDate opens,
        LocalDate latest,
        Set<RefillForecast.Caution> cautions) {

    static RefillWindow of(
            Optional<LocalDate> planning,
            LocalDate filled,
            Optional<LocalDate> beyondUse,
            RefillRules rules,
            Predicate<LocalDate> open,
            Derivation.Working working) {
        var byLabel = filled.plusDays(rules.lifeDays());
        var life = beyondUse.filter(byLabel::isAfter).orElse(byLabel);
        var byAlarm = planning.map(day -> day.minusDays(rules.marginDays()));
        var lifeDecides = byAlarm.map(life::isBefore).orElse(true);
        var wanted = byAlarm.filter(day -> !lifeDecides).orElse(life);
        tellLife(working, life, filled, beyondUse, rules);
        tellLatest(working, wanted, planning, life, rules);

        var cautions = EnumSet.noneOf(RefillForecast.Caution.class);
        if (wanted.isBefore(filled)) {
            cautions.add(RefillForecast.Caution.DUE_AT_ONCE);
        }
        var possible = later(wanted, filled);
        var snapped = OpenDays.earlier(possible, filled, open);
        if (snapped.isEmpty()) {
            cautions.add(RefillForecast.Caution.NO_OPEN_DAY);
        }
        var latest = snapped.orElse(possible);
        var first = later(latest.minusDays(rules.windowDays()), filled);
        var opens = OpenDays.earlier(first, filled, open).orElse(first);
        tellWindow(working, possible, latest, opens, filled, rules);

        var byLife = life.isBefore(byLabel) ? RefillForecast.Limit.BEYOND_USE : RefillForecast.Limit.LABEL_LIFE;
        return new RefillWindow(life, lifeDecides ? byLife : RefillForecast.Limit.ALARM, opens, latest, cautions);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private static void tellLife(
            Derivation.Working working,
            LocalDate life,
            LocalDate filled,
            Optional<LocalDate> beyondUse,
            RefillRules rules) {
        var first = Symbol.FIRST_DAY.is(filled);
        var span = Symbol.SPAN.is(Amount.count(rules.lifeDays(), Unit.DAYS));
        beyondUse.ifPresentOrElse(
                own -> working.day(Formula.LIFE_DAY_OF_BOTH, Symbol.LIFE_DAY, life, first, span, Symbol.END.is(own)),
                () -> working.day(Formula.LIFE_DAY, Symbol.LIFE_DAY, life, first, span));
    }

    private static void tellLatest(
            Derivation.Working working,
            LocalDate latest,
            Optional<LocalDate> planning,
            LocalDate life,
            RefillRules rules) {
        var lifeDay = Symbol.LIFE_DAY.is(life);
        var margin = Symbol.SPAN.is(Amount.count(rules.marginDays(), Unit.DAYS));
        planning.ifPresentOrElse(
                day -> working.day(
                        Formula.LATEST, Symbol.LATEST_ANY, latest, Symbol.PLANNING_DAY.is(day), margin, lifeDay),
                () -> working.day(Formula.LATEST_BY_LIFE, Symbol.LATEST_ANY, latest, lifeDay));
    }

    private static void tellWindow(
            Derivation.Working working,
            LocalDate possible,
            LocalDate latest,
            LocalDate opens,
            LocalDate filled,
            RefillRules rules) {
        working.day(Formula.OPEN_DAY, Symbol.LATEST, latest, Symbol.LATEST_ANY.is(possible));
        working.day(
                Formula.OPENS,
                Symbol.OPENS,
                opens,
                Symbol.FIRST_DAY.is(filled),
                Symbol.LATEST.is(latest),
                Symbol.SPAN.is(Amount.count(rules.windowDays(), Unit.DAYS)));
    }
}
