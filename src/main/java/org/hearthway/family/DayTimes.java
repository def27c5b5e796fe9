package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Tags;
import org.hearthway.program.FamilyTimes.Busy;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.HomeWeek.Time;

/** A day's times for exercises, each with what is done in it. */
final class DayTimes {

    private static final int NOON = 12;
    private static final int EVENING = 17;
    private static final Duration SOON = Duration.ofHours(2);

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
                .mapToInt(planned ->
                        -Math.floorDiv(-planned.minutes(), planned.times().size()))
                .sum();
    }

    /**
     * The line over a time: "Before school, 7:10 AM", and how long and with whom.
     *
     * @param busy what takes up time in the family's week
     */
    static Component head(Reader reader, DayStory day, Time time, List<Busy> busy) {
        var clock = reader.time(day.day().date().atTime(time.start()));
        var head = Tags.h2(
                "hw-time",
                beside(day, time, busy, true)
                        .map(what -> reader.say("family.time.before", what, clock))
                        .or(() -> beside(day, time, busy, false)
                                .map(what -> reader.say("family.time.after", what, clock)))
                        .orElseGet(() -> reader.say("family.time." + part(time.start()), clock)));
        var more = reader.say("family.minutes", minutes(day, time));
        head.add(Tags.span(
                "u-block",
                time.helpers().isEmpty()
                        ? more
                        : more + " · " + reader.say("family.time.with", reader.list(time.helpers()))));
        return head;
    }

    /** What comes soon after the time, or was soon before it, in the family's own word. */
    private static Optional<String> beside(DayStory day, Time time, List<Busy> busy, boolean after) {
        var end = time.start().plusMinutes(time.minutes());
        return busy.stream()
                .filter(one -> one.day() == day.day().date().getDayOfWeek()
                        && !one.what().isBlank())
                .filter(one -> {
                    var gap = after ? Duration.between(end, one.from()) : Duration.between(one.until(), time.start());
                    return !gap.isNegative() && gap.compareTo(SOON) <= 0;
                })
                .findFirst()
                .map(one -> small(one.what()));
    }

    /** A word as it stands within a sentence; one in capitals stays. */
    private static String small(String word) {
        return word.length() > 1 && Character.isLowerCase(word.charAt(1))
                ? Character.toLowerCase(word.charAt(0)) + word.substring(1)
                : word;
    }

    private static String part(LocalTime start) {
        return start.getHour() < NOON ? "morning" : start.getHour() < EVENING ? "afternoon" : "evening";
    }

    /** The line that says that an exercise comes once more. */
    static Component once(Reader reader, Planned planned) {
        return Tags.p(
                "hw-s hw-quiet",
                reader.say("family.time.again", reader.text(planned.exercise().name())));
    }
}
