package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;

/** The week as seven stones in a level row: filled as far as done, today lit, ahead outlined, rest dashed. */
final class WeekWay {

    private static final double MIDDLE = 26;
    private static final double GAP = 51;
    private static final double FIRST = 26;

    private WeekWay() {}

    static Component of(Reader reader, List<DayStory> days) {
        var picture = new SvgText("hw-dayway u-my2", 0, 0, 358, 74).named(label(reader, days));
        for (int i = 0; i + 1 < days.size(); i++) {
            var behind = days.get(i).day().date().isBefore(reader.today());
            picture.shape(
                    "path",
                    "class",
                    behind ? "st-behind" : "st-track",
                    "d",
                    "M" + SvgText.number(x(i)) + " " + SvgText.number(MIDDLE) + "h" + SvgText.number(GAP));
        }
        for (int i = 0; i < days.size(); i++) {
            stone(reader, picture, days.get(i), i);
        }
        return new Drawing(picture);
    }

    private static double x(int i) {
        return FIRST + GAP * i;
    }

    private static void stone(Reader reader, SvgText picture, DayStory day, int i) {
        var date = day.day().date();
        var present = date.equals(reader.today());
        var size = present ? 20 : 17;
        var outline = Stone.outline(x(i), MIDDLE, size, size * 0.82, i + 1);
        if (present) {
            picture.shape(
                    "ellipse",
                    "class",
                    "st-glow breathe",
                    "cx",
                    SvgText.number(x(i)),
                    "cy",
                    SvgText.number(MIDDLE),
                    "rx",
                    "46",
                    "ry",
                    "30");
            picture.shape("path", "class", "st-now", "d", outline).shape("path", "class", "st-now-edge", "d", outline);
        } else if (day.planned().isEmpty()) {
            picture.shape("path", "class", "st-later st-rest", "d", outline);
        } else {
            filled(picture, day, i, outline);
        }
        picture.text(x(i), 66, present ? "st-text sub here" : "st-text sub", "middle", name(reader, date));
    }

    private static void filled(SvgText picture, DayStory day, int i, String outline) {
        var share = (double) day.done() / day.planned().size();
        if (share >= 1) {
            picture.shape("path", "class", "st-done", "d", outline);
            picture.shape("path", "class", "st-done-mark", "d", "M" + SvgText.number(x(i) - 6) + " 26l4 4.5 8-9");
            return;
        }
        picture.shape("path", "class", "st-later", "d", outline);
        if (share > 0) {
            var empty = SvgText.number(100 * (1 - share));
            picture.shape("path", "class", "st-done", "d", outline, "style", "clip-path:inset(" + empty + "% 0 0 0)");
        }
    }

    private static String name(Reader reader, LocalDate date) {
        return date.equals(reader.today())
                ? reader.say("family.week.today")
                : reader.words().shortWeekday(reader.language(), date);
    }

    private static String label(Reader reader, List<DayStory> days) {
        var parts = days.stream()
                .map(day -> {
                    var weekday =
                            reader.words().weekday(reader.language(), day.day().date());
                    return day.planned().isEmpty()
                            ? reader.say("family.week.label.rest", weekday)
                            : reader.say(
                                    "family.week.label",
                                    weekday,
                                    day.done(),
                                    day.planned().size());
                })
                .toList();
        return reader.large(String.join("; ", parts));
    }
}
