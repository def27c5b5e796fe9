package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.time.ZoneId;

/** The day of the alarm to plan by. */
final class PlanningDay {

    private PlanningDay() {}

    /**
     * The earlier of the local date of the alarm, and the day of the fill and the whole days since. The count alone can
     * be a day late after clocks went back, the local date alone a day later than whole days say.
     */
    static LocalDate of(Reservoir reservoir, Reservoir.Reached alarm, ZoneId zone, Derivation.Working working) {
        var last = lastBefore(reservoir, alarm);
        var strength = last.program().strength();
        var rate = last.program().dosing().perDay(strength);
        Usage.left(reservoir, last.at(), working);
        if (rate.exact().signum() > 0
                && last.volume().compareTo(reservoir.pump().alarm()) >= 0) {
            var volume = working.line(
                    Formula.DAILY_VOLUME,
                    Symbol.DAILY_VOLUME,
                    rate.in(strength).perDay(),
                    Symbol.DAILY_DOSE.is(rate),
                    Symbol.STRENGTH.is(strength));
            var left = last.volume().less(reservoir.pump().alarm());
            var days = working.line(
                    Formula.DAYS_TO_ALARM,
                    Symbol.DAYS,
                    new Amount(left.exact().divide(volume.exact()), Unit.DAYS),
                    Symbol.VOLUME.is(last.volume()),
                    Symbol.ALARM_VOLUME.is(reservoir.pump().alarm()),
                    Symbol.DAILY_VOLUME.is(volume));
            // of a schedule the mean is not exact: there the whole days are told as they come
            if (reservoir.nodes().size() > 1 && !last.program().dosing().followsTheClock()) {
                working.line(
                        Formula.DAYS_TOGETHER,
                        Symbol.DAYS,
                        alarm.sinceFill().inDays(),
                        Symbol.DAYS.is(Elapsed.between(reservoir.filling().at(), last.at())
                                .inDays()),
                        Symbol.DAYS.is(days));
            }
        }
        var filled = reservoir.filling().at().atZone(zone).toLocalDate();
        var whole = Amount.count(alarm.sinceFill().wholeDays(), Unit.DAYS);
        working.line(
                Formula.WHOLE_DAYS,
                Symbol.WHOLE_DAYS,
                whole,
                Symbol.DAYS.is(alarm.sinceFill().inDays()));
        var counted = filled.plusDays(alarm.sinceFill().wholeDays());
        var local = alarm.at().atZone(zone).toLocalDate();
        working.line(
                Formula.COUNTED_DAY,
                Symbol.COUNTED_DAY,
                new Shown.Day(counted),
                Symbol.FIRST_DAY.is(new Shown.Day(filled)),
                Symbol.WHOLE_DAYS.is(whole));
        var day = counted.isBefore(local) ? counted : local;
        working.line(
                Formula.PLANNING_DAY,
                Symbol.PLANNING_DAY,
                new Shown.Day(day),
                Symbol.COUNTED_DAY.is(new Shown.Day(counted)),
                Symbol.ALARM_DAY.is(new Shown.Day(local)));
        return day;
    }

    private static Reservoir.Node lastBefore(Reservoir reservoir, Reservoir.Reached alarm) {
        var found = reservoir.nodes().get(0);
        for (var node : reservoir.nodes()) {
            if (!node.at().isAfter(alarm.at())) {
                found = node;
            }
        }
        return found;
    }
}
