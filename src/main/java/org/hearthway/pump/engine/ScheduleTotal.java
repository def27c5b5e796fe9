package org.hearthway.pump.engine;

import java.util.ArrayList;

/** What a day of steps and boluses comes to. */
public record ScheduleTotal(DailyDose dose, Derivation how) {

    /**
     * Adds a day up.
     *
     * @throws org.hearthway.base.Invalid when boluses overlap or the total is no daily dose
     */
    public static ScheduleTotal of(DayPattern day) {
        var total = new Dosing.Cycle(day).dose();
        var working = new Derivation.Working();
        var parts = new ArrayList<Derivation.Figure>();
        var running = running(day);
        for (var step : day.steps()) {
            var hours = Minutes.elapsed(day.mode() == BolusMode.ADDS_TO_BASAL ? step.minutes() : free(step, running));
            parts.add(Symbol.PART.is(working.line(
                    Formula.STEP,
                    Symbol.PART,
                    step.rate().during(hours),
                    Symbol.HOURLY_DOSE.is(step.rate().perHour()),
                    Symbol.HOURS.is(hours))));
        }
        day.boluses().forEach(bolus -> parts.add(Symbol.PART.is(bolus.dose())));
        working.line(Formula.DAY_TOTAL, Symbol.DAILY_DOSE, total, parts.toArray(Derivation.Figure[]::new));
        return new ScheduleTotal(total, working.done());
    }

    private static boolean[] running(DayPattern day) {
        var running = new boolean[Minutes.A_DAY];
        for (var bolus : day.boluses()) {
            for (var i = 0; i < bolus.minutes(); i++) {
                running[(bolus.start() + i) % Minutes.A_DAY] = true;
            }
        }
        return running;
    }

    private static int free(Step step, boolean[] running) {
        var free = 0;
        for (var i = 0; i < step.minutes(); i++) {
            free += running[(step.start() + i) % Minutes.A_DAY] ? 0 : 1;
        }
        return free;
    }
}
