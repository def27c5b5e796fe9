package org.hearthway.pump.ui;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.hearthway.base.Language;
import org.hearthway.words.Words;

/** Says things on the page of a pump, in one language. */
final class PumpWords {

    private final Words words;
    private final Language language;

    PumpWords(Words words, Language language) {
        this.words = words;
        this.language = language;
    }

    Language language() {
        return language;
    }

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    /** A date with its year: alarm dates may lie years ahead. */
    String date(LocalDate day) {
        return words.dateWithYear(language, day);
    }

    /** A date with its weekday and year. */
    String full(LocalDate day) {
        return say("pump.day", words.weekday(language, day), date(day));
    }

    /** The name of a day's weekday. */
    String weekday(LocalDate day) {
        return words.weekday(language, day);
    }

    /** The same cut short. */
    String shortWeekday(LocalDate day) {
        return words.shortWeekday(language, day);
    }

    /** Parts one after another as people say them. */
    String list(List<String> parts) {
        return words.list(language, parts);
    }

    /** A time of day. */
    String time(LocalTime time) {
        return words.time(language, time);
    }

    /** A date near today, cut short. */
    String shortDate(LocalDate day) {
        return words.shortMonthDay(language, day);
    }

    /** How far the day is from today. */
    String distance(LocalDate day, LocalDate today) {
        var days = ChronoUnit.DAYS.between(today, day);
        if (days == 0) {
            return say("pump.distance.today");
        }
        return days > 0 ? say("pump.distance.ahead", days) : say("pump.distance.past", -days);
    }
}
