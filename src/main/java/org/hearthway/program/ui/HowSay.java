package org.hearthway.program.ui;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.hearthway.base.Language;
import org.hearthway.program.ProgramWords;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.words.Words;

/** The words of how a program goes, in the language of the person who looks. */
record HowSay(Words words, ProgramWords program, Language language) {

    String say(String key, Object... args) {
        return words.say(language, "program.how." + key, args);
    }

    /** The word for one of a group, such as a reason. */
    String one(String group, String which, Object... args) {
        return say(group + '.' + which, args);
    }

    String name(String exercise) {
        return program.name(language, exercise);
    }

    String dose(ProgramLine line) {
        return program.dose(language, line);
    }

    String date(LocalDate day) {
        return words.date(language, day);
    }

    String shortDay(LocalDate day) {
        return words.shortMonthDay(language, day);
    }

    /** "85%", "81.3%", or that nothing was planned. */
    String percent(OptionalDouble percent) {
        return percent.isPresent()
                ? say("percent", Math.round(percent.getAsDouble() * 10) / 10.0)
                : say("none-planned");
    }
}
