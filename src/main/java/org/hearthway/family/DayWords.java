package org.hearthway.family;

import java.time.LocalTime;
import java.util.ArrayList;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Reason;

/** What is said about a day and about one exercise of it. */
final class DayWords {

    private DayWords() {}

    /** The greeting that fits the hour on the person's own clock. */
    static String greeting(Reader reader) {
        return reader.say("family.greeting." + partOfDay(reader.now().toLocalTime()));
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
            case CALL_FIRST -> reader.say("family.today.stop");
            case REST -> reader.say("family.today.rest");
            case FRESH -> reader.sentence("family.today.fresh", day.open());
            case UNDERWAY ->
                day.done() == 0
                        ? reader.sentence("family.today.left", day.open())
                        : reader.sentence("family.today.underway", day.done(), day.open());
            case OVER ->
                day.couldNot() == 0
                        ? reader.sentence("family.today.over", day.done())
                        : reader.sentence("family.today.over.some", day.done());
            case SPENT -> reader.say("family.today.spent");
        };
    }

    /** What was said of an exercise: "Done at 7:40 AM · felt easy", "Could not: too tired. That is fine." */
    static String said(Reader reader, Logged logged) {
        var entry = logged.entry();
        var parts = new ArrayList<String>();
        switch (entry.outcome()) {
            case DONE -> parts.add(at(reader, logged, "family.said.done", "family.said.done.at"));
            case SOME -> parts.add(at(reader, logged, "family.said.some", "family.said.some.at"));
            case COULD_NOT -> parts.add(couldNot(reader, entry));
        }
        if (entry.outcome() != Outcome.COULD_NOT) {
            entry.effort().ifPresent(effort -> parts.add(reader.say("family.felt." + band(effort))));
        }
        pain(reader, entry).ifPresent(parts::add);
        if (logged.names().size() > 1) {
            parts.add(reader.list(logged.names()));
        }
        return String.join(" · ", parts);
    }

    private static String couldNot(Reader reader, Entry entry) {
        var why = reader.say("family.reason." + entry.reason().orElse(Reason.OTHER));
        // comfort would sound wrong before a number for pain
        return reader.say(
                pain(reader, entry).isPresent() ? "family.said.could-not.pain" : "family.said.could-not", why);
    }

    private static String at(Reader reader, Logged logged, String plain, String withHour) {
        var at = reader.local(logged.at());
        // a tick made later than its day says the day, not the hour
        return at.toLocalDate().equals(logged.entry().day())
                ? reader.say(withHour, at.toLocalTime())
                : reader.say(plain);
    }

    private static java.util.Optional<String> pain(Reader reader, Entry entry) {
        return entry.pain().filter(pain -> pain > 0).map(pain -> reader.say("family.hurt", pain));
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
