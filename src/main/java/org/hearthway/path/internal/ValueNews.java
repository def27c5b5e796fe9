package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.path.ClinicValues.CareMove;
import org.hearthway.path.ClinicValues.ChildEffect;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** What a family is told when the clinic's own values change its plan: the next date, the next rule, how many more. */
@Component
class ValueNews {

    private final Words words;
    private final PathReasons reasons;

    ValueNews(Words words, PathReasons reasons) {
        this.words = words;
        this.reasons = reasons;
    }

    Bilingual told(PlanShift shift, ChildEffect effect) {
        var parts = new ArrayList<Bilingual>();
        parts.add(words.both("path.told.values"));
        var today = shift.after().today();
        effect.moves().stream()
                .findFirst()
                .ifPresent(first -> shift.after()
                        .stage(first.stage())
                        .ifPresent(stage -> parts.add(
                                reasons.told(stage, first.from(), effect.moves().size() - 1, today))));
        effect.ends().stream()
                .findFirst()
                .ifPresent(first -> parts.add(ValueWords.said(language -> words.say(
                        language,
                        "path.told.end",
                        first.name(),
                        date(language, first.to()),
                        date(language, first.from())))));
        effect.cares().stream()
                .findFirst()
                .ifPresent(first -> parts.add(care(first, effect.cares().size() - 1, today)));
        effect.familyTasks().stream()
                .findFirst()
                .ifPresent(first -> parts.add(ValueWords.said(language -> words.say(
                        language,
                        "path.told.task",
                        first.name(),
                        date(language, first.to()),
                        date(language, first.from()),
                        effect.familyTasks().size() - 1))));
        effect.noDay().stream().findFirst().ifPresent(stage -> parts.add(words.both("path.told.no-day", stage)));
        if (parts.size() == 1) {
            parts.add(words.both("path.told.visits", effect.visits()));
        }
        return new Bilingual(joined(parts, Language.EN), joined(parts, Language.ES));
    }

    private static String joined(List<Bilingual> parts, Language language) {
        return String.join(" ", parts.stream().map(part -> part.in(language)).toList());
    }

    private Bilingual care(CareMove care, int more, LocalDate today) {
        return ValueWords.said(language -> {
            var says = care.says().in(language);
            if (!care.newUntil().isAfter(today)) {
                return words.say(language, "path.told.care.over", says, more);
            }
            return care.until().equals(care.newUntil())
                    ? words.say(
                            language,
                            "path.told.care.from",
                            says,
                            date(language, care.newFrom()),
                            date(language, care.from()),
                            more)
                    : words.say(
                            language,
                            "path.told.care.until",
                            says,
                            date(language, care.newUntil()),
                            date(language, care.until()),
                            more);
        });
    }

    private String date(Language language, LocalDate day) {
        return words.dateWithYear(language, day);
    }
}
