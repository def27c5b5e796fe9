package org.hearthway.pump.ui;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.engine.Bolus;
import org.hearthway.pump.engine.BolusMode;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Step;

/** Tells in words how a pump gives its drug. */
final class DosingWords {

    /** A Monday: only its weekday is told. */
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 16);

    private final PumpFigures figures;
    private final PumpWords say;

    DosingWords(PumpFigures figures) {
        this.figures = figures;
        this.say = figures.words();
    }

    /** In one line. */
    String line(Setting set) {
        var dosing = set.dosing();
        var dose = figures.result(dosing.perDay(set.strength()));
        if (dosing instanceof Dosing.Stopped) {
            return say.say("pump.state.dosing.stopped");
        }
        if (dosing instanceof Dosing.FixedFlow fixed) {
            return say.say(
                    "pump.state.dosing.fixed", figures.result(fixed.flow().perDay()), dose);
        }
        if (dosing instanceof Dosing.Constant) {
            return say.say("pump.state.dosing.constant", dose);
        }
        return say.say(dosing instanceof Dosing.Week ? "pump.state.dosing.week" : "pump.state.dosing.schedule", dose);
    }

    /** Each step and bolus, of a week day by day; nothing for one rate. */
    List<String> parts(Setting set) {
        if (set.dosing() instanceof Dosing.Cycle cycle) {
            return day(cycle.day());
        }
        var all = new ArrayList<String>();
        if (set.dosing() instanceof Dosing.Week week) {
            for (var day : DayOfWeek.values()) {
                var pattern = week.days().get(day);
                if (pattern != null) {
                    all.add(say.say(
                            "pump.state.dosing.weekday",
                            say.weekday(MONDAY.plusDays(day.getValue() - 1)),
                            figures.result(week.doses().get(day.getValue() - 1)),
                            String.join("; ", day(pattern))));
                }
            }
        }
        return all;
    }

    private List<String> day(DayPattern day) {
        var all = new ArrayList<String>();
        day.steps().stream()
                .sorted(Comparator.comparing(Step::from))
                .forEach(step -> all.add(say.say(
                        "pump.state.dosing.step",
                        step.from(),
                        step.to(),
                        figures.result(step.rate().perHour()))));
        day.boluses().stream()
                .sorted(Comparator.comparing(Bolus::at))
                .forEach(bolus -> all.add(say.say(
                        day.mode() == BolusMode.ADDS_TO_BASAL
                                ? "pump.state.dosing.bolus.adds"
                                : "pump.state.dosing.bolus.replaces",
                        bolus.at(),
                        figures.result(bolus.dose()),
                        bolus.minutes())));
        return all;
    }
}
