package org.hearthway.words;

import java.time.LocalDate;
import java.time.LocalTime;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;

/**
 * The words of one language, for page templates: {@code th:text="${say.of('sign.title')}"}.
 *
 * @param words where they stand
 * @param language the language that the page speaks
 */
public record Say(Words words, Language language) {

    /** A message. */
    public String of(String key, Object... args) {
        return words.say(language, key, args);
    }

    /** What is wrong, in words. */
    public String problem(Problem problem) {
        return words.say(language, problem);
    }

    /** A text of the content. */
    public String text(Bilingual both) {
        return both.in(language);
    }

    /** A date with its weekday in full: "Tuesday, March 17". */
    public String longDate(LocalDate date) {
        return words.longDate(language, date);
    }

    /** A wall-clock time: "10:30 AM". */
    public String time(LocalTime time) {
        return words.time(language, time);
    }

    /** The two-letter tag for {@code lang}. */
    public String tag() {
        return language.tag();
    }
}
