package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Div;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;
import org.hearthway.program.FamilyTimes.Times;
import org.hearthway.program.engine.Pace;
import org.hearthway.program.engine.ProgramLine;

/** Minutes of each day in the first week of what is being written. */
final class WeekLoad extends Div {

    private static final int DAYS = DayOfWeek.values().length;
    private static final double WIDTH = 252;
    private static final double FOOT = 92;
    private static final double ROOM = 66;

    private final transient Say say;
    private final transient Pace pace;
    private final transient Optional<Times> times;

    /**
     * Draws nothing yet.
     *
     * @param times when the family has time, if it has said so
     */
    WeekLoad(Say say, Pace pace, Optional<Times> times) {
        this.say = say;
        this.pace = pace;
        this.times = times.filter(known -> !known.slots().isEmpty());
    }

    void follow(List<ProgramLine> lines, LocalDate effective) {
        removeAll();
        var minutes = minutes(lines, effective);
        var total = minutes.values().stream().mapToInt(Integer::intValue).sum();
        add(
                Tags.div(
                        "hw-colh",
                        Tags.h2("", say.say("load")),
                        Tags.span("grow", ""),
                        Tags.span(
                                "hw-sub",
                                times.map(known -> say.say("load.family", total, known.minutesAWeek()))
                                        .orElseGet(() -> say.say("load.total", total)))),
                draw(minutes));
        times.ifPresent(known -> room(known, minutes, total));
    }

    /** Says where there is more to do than time for it. */
    private void room(Times known, Map<DayOfWeek, Integer> minutes, int total) {
        add(Tags.p("hw-sub", say.say("load.line")));
        if (total > known.minutesAWeek()) {
            add(Tags.p("hw-care", say.say("load.over", total - known.minutesAWeek())));
        }
        minutes.forEach((day, sum) -> {
            if (sum > known.minutesOn(day)) {
                add(Tags.p(
                        "hw-care",
                        say.say("load.over.day", say.one("day", day.getValue() + ".long"), known.minutesOn(day), sum)));
            }
        });
    }

    /** What is on some of its days only counts on each of them by its share. */
    private Map<DayOfWeek, Integer> minutes(List<ProgramLine> lines, LocalDate effective) {
        var minutes = new EnumMap<DayOfWeek, Integer>(DayOfWeek.class);
        for (int i = 0; i < DAYS; i++) {
            var day = effective.plusDays(i);
            var sum = lines.stream()
                    .filter(line -> line.isOn(day))
                    .mapToDouble(line -> pace.minutes(line) * share(line))
                    .sum();
            minutes.put(day.getDayOfWeek(), (int) Math.round(sum));
        }
        return minutes;
    }

    private static double share(ProgramLine line) {
        return Math.min(
                1,
                line.prescription().rhythm().days()
                        / (double) Math.max(1, line.days().size()));
    }

    private Drawing draw(Map<DayOfWeek, Integer> minutes) {
        var family = times.stream()
                .flatMapToInt(known -> Arrays.stream(DayOfWeek.values()).mapToInt(known::minutesOn))
                .max()
                .orElse(0);
        var most = Math.max(1, Math.max(family, Collections.max(minutes.values())));
        var spoken = new StringBuilder(say.say("load")).append(": ");
        minutes.forEach((day, sum) -> spoken.append(say.say("load.day", say.one("day", day.getValue() + ".long"), sum))
                .append(' '));
        var picture =
                new SvgText("u-block", 0, 0, WIDTH, 116).named(spoken.toString().strip());
        minutes.forEach((day, sum) -> bar(picture, day, sum, ROOM / most));
        picture.shape("path", "class", "ch-ax2", "d", "M0 " + SvgText.number(FOOT) + "H" + SvgText.number(WIDTH));
        return new Drawing(picture);
    }

    private void bar(SvgText picture, DayOfWeek day, int sum, double minute) {
        var height = sum * minute;
        var family = times.map(known -> known.minutesOn(day) * minute).orElse(0.0);
        var middle = WIDTH / DAYS * (day.getValue() - 0.5);
        if (sum > 0) {
            picture.shape(
                    "rect",
                    "class",
                    "ch-bar",
                    "x",
                    SvgText.number(middle - 13),
                    "y",
                    SvgText.number(FOOT - height),
                    "width",
                    "26",
                    "height",
                    SvgText.number(height),
                    "rx",
                    "3");
        }
        if (times.isPresent()) {
            picture.shape(
                    "path",
                    "class",
                    "ch-lim",
                    "d",
                    "M" + SvgText.number(middle - 16) + " " + SvgText.number(FOOT - family) + "h32");
        }
        var above = sum == 0 ? say.say("load.rest") : String.valueOf(sum);
        picture.text(middle, FOOT - Math.max(height, family) - 6, "ch-tb", "middle", above);
        picture.text(middle, FOOT + 16, "ch-t", "middle", say.one("day", day.getValue()));
    }
}
