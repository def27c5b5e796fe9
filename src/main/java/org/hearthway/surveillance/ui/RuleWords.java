package org.hearthway.surveillance.ui;

import java.time.LocalDate;
import org.hearthway.base.Language;
import org.hearthway.surveillance.engine.Due;
import org.hearthway.surveillance.engine.Step;
import org.hearthway.words.Words;

/** Says in words which part of a rhythm asks for a check, and from which day it is counted. */
record RuleWords(Words words, Language language) {

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    String day(LocalDate day) {
        return words.dateWithYear(language, day);
    }

    /** When: a day, or two between which it lies. */
    String when(Due due) {
        return due.from().equals(due.by())
                ? say("surveillance.about", day(due.by()))
                : say("surveillance.between", day(due.from()), day(due.by()));
    }

    String why(Due due) {
        var counted = day(due.counted());
        if (due.rule() instanceof Step.First first) {
            return say(
                    "surveillance.why.first",
                    first.from().toTotalMonths(),
                    first.until().toTotalMonths(),
                    counted);
        }
        if (due.rule() instanceof Step.Age age) {
            return age.from().equals(age.until())
                    ? say("surveillance.why.age", age.from().getYears(), counted)
                    : say(
                            "surveillance.why.ages",
                            age.from().getYears(),
                            age.until().getYears(),
                            counted);
        }
        if (due.rule() instanceof Step.AfterFirst after) {
            return say("surveillance.why.after-first", after.gap().toTotalMonths(), counted);
        }
        return every((Step.Every) due.rule(), counted);
    }

    private String every(Step.Every every, String counted) {
        if (every.untilStable()) {
            return say("surveillance.why.until-stable", every.months(), counted);
        }
        return every.during()
                .map(during -> say("surveillance.why.during", every.months(), counted, during.toTotalMonths()))
                .orElseGet(() -> say("surveillance.why.every", every.months(), counted));
    }
}
