package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Div;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;
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

    WeekLoad(Say say, Pace pace) {
        this.say = say;
        this.pace = pace;
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
                        Tags.span("hw-sub", say.say("load.total", total))),
                draw(minutes));
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
        var most = Math.max(1, Collections.max(minutes.values()));
        var spoken = new StringBuilder(say.say("load")).append(": ");
        minutes.forEach((day, sum) -> spoken.append(say.say("load.day", say.one("day", day.getValue() + ".long"), sum))
                .append(' '));
        var picture =
                new SvgText("u-block", 0, 0, WIDTH, 116).named(spoken.toString().strip());
        minutes.forEach((day, sum) -> bar(picture, day, sum, ROOM * sum / most));
        picture.shape("path", "class", "ch-ax2", "d", "M0 " + SvgText.number(FOOT) + "H" + SvgText.number(WIDTH));
        return new Drawing(picture);
    }

    private void bar(SvgText picture, DayOfWeek day, int sum, double height) {
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
        var above = sum == 0 ? say.say("load.rest") : String.valueOf(sum);
        picture.text(middle, FOOT - height - 6, "ch-tb", "middle", above);
        picture.text(middle, FOOT + 16, "ch-t", "middle", say.one("day", day.getValue()));
    }
}
