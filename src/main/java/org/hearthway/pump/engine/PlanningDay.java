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
        tellDays(reservoir, alarm, working);
        var filled = reservoir.filling().at().atZone(zone).toLocalDate();
        var whole = Amount.count(alarm.sinceFill().wholeDays(), Unit.DAYS);
        working.line(
                Formula.WHOLE_DAYS,
                Symbol.WHOLE_DAYS,
                whole,
                Symbol.DAYS_SINCE_FILL.is(alarm.sinceFill().inDays()));
        var counted = working.day(
                Formula.COUNTED_DAY,
                Symbol.COUNTED_DAY,
                filled.plusDays(alarm.sinceFill().wholeDays()),
                Symbol.FIRST_DAY.is(filled),
                Symbol.WHOLE_DAYS.is(whole));
        var local = alarm.at().atZone(zone).toLocalDate();
        return working.day(
                Formula.PLANNING_DAY,
                Symbol.PLANNING_DAY,
                counted.isBefore(local) ? counted : local,
                Symbol.COUNTED_DAY.is(counted),
                Symbol.ALARM_DAY.is(local));
    }

    /** What was left at the last change before the alarm, and how long that lasts. */
    private static void tellDays(Reservoir reservoir, Reservoir.Reached alarm, Derivation.Working working) {
        var last = reservoir.nodeAt(alarm.at());
        Usage.left(reservoir, last.at(), working);
        var before = Elapsed.between(reservoir.filling().at(), last.at()).inDays();
        Usage.days(Formula.DAYS_TO_ALARM, last, reservoir.pump().alarm(), working)
                .ifPresent(days -> working.line(
                        last.program().dosing().followsTheClock() ? Formula.DAYS_BY_STEPS : Formula.DAYS_SINCE_FILL,
                        Symbol.DAYS_SINCE_FILL,
                        alarm.sinceFill().inDays(),
                        Symbol.DAYS_BEFORE.is(before),
                        Symbol.DAYS.is(days)));
    }
}
