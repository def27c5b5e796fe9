package org.hearthway.family;

import java.time.LocalTime;
import java.util.ArrayList;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;

/** What is said about a day and about one exercise of it. */
final class DayWords {

    private DayWords() {}

    /** The greeting that fits the hour on the person's own clock. */
    static String greeting(Reader reader) {
        return reader.say("greeting." + partOfDay(reader.now().toLocalTime()));
    }

    /** Which part of the day it is: morning from 4, afternoon from 12, evening from 18. */
    static String partOfDay(LocalTime time) {
        if (time.getHour() < 4) {
            return "night";
        }
        if (time.getHour() < 12) {
            return "morning";
        }
        return time.getHour() < 18 ? "afternoon" : "evening";
    }

    /** The day in one sentence: "Two done, two to go." */
    static String headline(Reader reader, DayStory day) {
        return switch (day.mood()) {
            case CALL_FIRST -> reader.say("today.stop");
            case REST -> reader.say("today.rest");
            case FRESH -> reader.sentence("today.fresh", day.open());
            case UNDERWAY ->
                day.done() == 0
                        ? reader.sentence("today.left", day.open())
                        : reader.sentence("today.underway", day.done(), day.open());
            case OVER ->
                day.couldNot() == 0
                        ? reader.sentence("today.over", day.done())
                        : reader.sentence("today.over.some", day.done());
            case SPENT -> reader.say("today.spent");
        };
    }

    /** What was said of an exercise: "Done at 7:40 AM · felt easy", "Could not: too tired. That is fine." */
    static String said(Reader reader, Logged logged) {
        var entry = logged.entry();
        var parts = new ArrayList<String>();
        parts.add(
                switch (entry.outcome()) {
                    case DONE -> at(reader, logged, "said.done");
                    case SOME -> at(reader, logged, "said.some");
                    case COULD_NOT ->
                        entry.reason()
                                .map(reason -> reader.say("said.could-not.why", reader.say("reason." + reason)))
                                .orElseGet(() -> reader.say("said.could-not"));
                });
        entry.effort().ifPresent(effort -> parts.add(reader.say("felt." + band(effort))));
        pain(reader, entry).ifPresent(parts::add);
        return String.join(" · ", parts);
    }

    private static String at(Reader reader, Logged logged, String key) {
        var at = reader.local(logged.at());
        // a tick made later than its day says the day, not the hour
        return at.toLocalDate().equals(logged.entry().day())
                ? reader.say(key + ".at", at.toLocalTime())
                : reader.say(key);
    }

    private static java.util.Optional<String> pain(Reader reader, Entry entry) {
        return entry.pain().filter(pain -> pain > 0).map(pain -> reader.say("hurt", pain));
    }

    /** The four bands over the numbers 0 to 10: none, little, fair, all. */
    static String band(int rating) {
        if (rating == 0) {
            return "none";
        }
        if (rating <= 3) {
            return "little";
        }
        return rating <= 6 ? "fair" : "all";
    }
}
