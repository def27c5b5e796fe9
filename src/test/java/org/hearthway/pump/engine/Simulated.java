package org.hearthway.pump.engine;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;

/** A pump that is watched minute by minute, in binary numbers: another way to the same volumes. */
final class Simulated {

    private Simulated() {}

    /** Micrograms per minute that a dosing gives at a moment of the pump's clock. */
    static double perMinute(Dosing dosing, Concentration strength, LocalDateTime shown) {
        if (dosing instanceof Dosing.Constant constant) {
            return constant.dose().microgramsPerDay().doubleValue() / 1440;
        }
        if (dosing instanceof Dosing.FixedFlow fixed) {
            return fixed.flow().forPlot() * strength.forPlot() / 60;
        }
        if (dosing instanceof Dosing.Cycle cycle) {
            return perMinute(cycle.day(), cycle.day(), shown);
        }
        if (dosing instanceof Dosing.Week week) {
            var today = DayOfWeek.from(shown);
            return perMinute(week.days().get(today), week.days().get(today.minus(1)), shown);
        }
        return 0;
    }

    private static double perMinute(DayPattern today, DayPattern yesterday, LocalDateTime shown) {
        var minute = shown.getHour() * 60 + shown.getMinute();
        var steps = 0.0;
        for (var step : today.steps()) {
            var from = step.from().toSecondOfDay() / 60;
            var to = step.to().toSecondOfDay() / 60;
            if (from < to ? from <= minute && minute < to : minute >= from || minute < to) {
                steps = step.rate().forPlot() / 1440;
            }
        }
        for (var bolus : today.boluses()) {
            var begun = minute - bolus.at().toSecondOfDay() / 60;
            if (begun >= 0 && begun < bolus.minutes()) {
                return under(today, steps, bolus);
            }
        }
        for (var bolus : yesterday.boluses()) {
            if (minute + 1440 - bolus.at().toSecondOfDay() / 60 < bolus.minutes()) {
                return under(yesterday, steps, bolus);
            }
        }
        return steps;
    }

    private static double under(DayPattern day, double steps, Bolus bolus) {
        var rate = bolus.dose().forPlot() / bolus.minutes();
        return day.mode() == BolusMode.ADDS_TO_BASAL ? steps + rate : rate;
    }

    static double millilitresPerMinute(Program program, Instant at) {
        var shown = LocalDateTime.ofEpochSecond(
                at.getEpochSecond() + program.clock().offset().getTotalSeconds(), 0, ZoneOffset.UTC);
        return perMinute(program.dosing(), program.strength(), shown)
                / program.strength().forPlot();
    }

    /** The program that was entered last among those that had begun; programs are in the order of entry. */
    static Program running(List<Program> programs, Instant at) {
        var found = programs.get(0);
        for (var program : programs) {
            found = program.from().isAfter(at) ? found : program;
        }
        return found;
    }

    /** What is left after so many minutes. */
    static double left(double filled, List<Program> programs, Instant from, int minutes) {
        var left = filled;
        for (var i = 0; i < minutes; i++) {
            var at = from.plusSeconds(60L * i);
            left = Math.max(0, left - millilitresPerMinute(running(programs, at), at));
        }
        return left;
    }

    /** The first minute at whose end no more than a volume is left, or so many when there is none. */
    static int minutesTo(double volume, double filled, List<Program> programs, Instant from, int most) {
        var left = filled;
        for (var i = 0; i < most; i++) {
            var at = from.plusSeconds(60L * i);
            left -= millilitresPerMinute(running(programs, at), at);
            if (left <= volume + 1e-9) {
                return i;
            }
        }
        return most;
    }
}
