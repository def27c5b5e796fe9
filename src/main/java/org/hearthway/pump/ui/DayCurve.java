package org.hearthway.pump.ui;

import static org.hearthway.parts.SvgText.number;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Program;

/** What a step schedule gives over a day, or over the days of a week, by the pump's own clock. The words tell the same. */
final class DayCurve {

    private static final double WIDTH = 320;
    private static final double HEIGHT = 84;
    private static final double LEFT = 4;
    private static final double RIGHT = 316;
    private static final double TOP = 8;
    private static final double BOTTOM = 62;
    private static final int A_DAY = 1440;
    private static final int QUARTERS = 4;

    /** A Monday; days of the week follow it. */
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 16);

    private final Program program;
    private final List<DayPattern> days;

    private DayCurve(Setting set, List<DayPattern> days) {
        this.days = days;
        this.program = Program.set(
                MONDAY.atStartOfDay().toInstant(ZoneOffset.UTC), ZoneOffset.UTC, set.strength(), set.dosing());
    }

    /** Nothing for a dosing that is the same all the time. */
    static Optional<Drawing> of(Setting set, PumpWords say) {
        if (set.dosing() instanceof Dosing.Cycle cycle) {
            return Optional.of(new DayCurve(set, List.of(cycle.day())).draw(say));
        }
        if (set.dosing() instanceof Dosing.Week week) {
            return Optional.of(new DayCurve(set, List.copyOf(week.days().values())).draw(say));
        }
        return Optional.empty();
    }

    private Drawing draw(PumpWords say) {
        var picture = new SvgText("u-block", 0, 0, WIDTH, HEIGHT).decorative();
        picture.shape("path", "class", "ch-ax2", "d", "M" + number(LEFT) + " " + number(BOTTOM) + "H" + number(RIGHT));
        var minutes = minutes();
        var most = minutes.stream().mapToDouble(this::rate).max().orElse(1);
        var path = new StringBuilder("M").append(number(LEFT)).append(' ').append(number(BOTTOM));
        for (var minute : minutes) {
            path.append("H").append(number(x(minute)));
            path.append("V").append(number(BOTTOM - (BOTTOM - TOP) * rate(minute) / most));
        }
        path.append("H")
                .append(number(RIGHT))
                .append("V")
                .append(number(BOTTOM))
                .append("Z");
        picture.shape("path", "class", "dc-area", "d", path.toString());
        var marks = days.size() == 1 ? QUARTERS : days.size();
        for (var i = 0; i < marks; i++) {
            var minute = days.size() * A_DAY / marks * i;
            picture.shape("path", "class", "ch-ax2", "d", "M" + number(x(minute)) + " " + number(BOTTOM) + "v5");
            picture.text(
                    x(minute) + 2,
                    BOTTOM + 17,
                    "ch-t",
                    "start",
                    days.size() == 1
                            ? say.time(LocalTime.MIDNIGHT.plusMinutes(minute))
                            : say.shortWeekday(MONDAY.plusDays(i)));
        }
        return new Drawing(picture);
    }

    /** Every minute at which the rate may change. */
    private Collection<Integer> minutes() {
        var all = new TreeSet<Integer>();
        for (var day = 0; day < days.size(); day++) {
            var start = day * A_DAY;
            all.add(start);
            Stream.concat(
                            days.get(day).steps().stream().map(step -> minute(step.from())),
                            days.get(day).boluses().stream()
                                    .flatMap(bolus ->
                                            Stream.of(minute(bolus.at()), minute(bolus.at()) + bolus.minutes())))
                    .map(minute -> (start + minute) % (days.size() * A_DAY))
                    .forEach(all::add);
        }
        return all;
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    private double rate(int minute) {
        return program.rate(program.from().plusSeconds(minute * 60L)).forPlot();
    }

    private double x(int minute) {
        return LEFT + (RIGHT - LEFT) * minute / (days.size() * A_DAY);
    }
}
