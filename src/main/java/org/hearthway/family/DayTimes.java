package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.LocalTime;
import java.util.List;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.HomeWeek.Time;

/** A day's times for exercises, each with what is done in it. */
final class DayTimes {

    private static final int NOON = 12;
    private static final int EVENING = 17;

    private DayTimes() {}

    /** What begins in that time. An exercise that is done more often is ticked where it is first. */
    static List<Planned> in(DayStory day, Time time) {
        return day.planned().stream()
                .filter(planned -> planned.times().stream()
                        .findFirst()
                        .filter(time.start()::equals)
                        .isPresent())
                .toList();
    }

    /** What is done once more in that time. */
    static List<Planned> again(DayStory day, Time time) {
        return day.planned().stream()
                .filter(planned -> planned.times().stream().skip(1).anyMatch(time.start()::equals))
                .toList();
    }

    /** What has no time, after times were changed. */
    static List<Planned> untimed(DayStory day) {
        return day.planned().stream()
                .filter(planned -> planned.times().isEmpty())
                .toList();
    }

    static int minutes(DayStory day, Time time) {
        return day.planned().stream()
                .filter(planned -> planned.times().contains(time.start()))
                .mapToInt(planned -> -Math.floorDiv(-planned.minutes(), planned.times().size()))
                .sum();
    }

    /** The line over a time: "In the morning, 7:10 AM · 12 minutes · with Ana". */
    static Component head(Reader reader, DayStory day, Time time) {
        var words = reader.say(
                "family.time." + part(time.start()), reader.time(day.day().date().atTime(time.start())));
        var head = Tags.h2("hw-time", words);
        var more = reader.say("family.minutes", minutes(day, time));
        head.add(Tags.span(
                "u-block",
                time.helpers().isEmpty()
                        ? more
                        : more + " · " + reader.say("family.time.with", reader.list(time.helpers()))));
        return head;
    }

    private static String part(LocalTime start) {
        return start.getHour() < NOON ? "morning" : start.getHour() < EVENING ? "afternoon" : "evening";
    }

    /** The line that says that an exercise comes once more. */
    static Component once(Reader reader, Planned planned) {
        return Tags.p("hw-s hw-quiet", reader.say("family.time.again", reader.text(planned.exercise().name())));
    }
}
