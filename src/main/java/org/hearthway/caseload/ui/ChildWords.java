package org.hearthway.caseload.ui;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.hearthway.base.Language;
import org.hearthway.path.engine.Plan;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Says where a child stands on its path, in few words. */
@Component
class ChildWords {

    /** Stages longer ago than this are told without a week. */
    private static final int WEEKS_TOLD = 52;

    private final Words words;

    ChildWords(Words words) {
        this.words = words;
    }

    /** The path's name. */
    String path(Language language, Plan plan) {
        return plan.template().name().in(language);
    }

    /** The present stage and its week, or that the path has not begun. */
    String stage(Language language, Plan plan, LocalDate today) {
        return plan.now()
                .map(now -> {
                    var name = now.stage().name().in(language);
                    var week = ChronoUnit.WEEKS.between(now.start(), today) + 1;
                    return week > 1 && week <= WEEKS_TOLD
                            ? words.say(language, "caseload.child.stage-week", name, week)
                            : name;
                })
                .orElseGet(() -> words.say(language, "caseload.child.not-begun"));
    }
}
