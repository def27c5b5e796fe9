package org.hearthway.caseload.ui;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Language;
import org.hearthway.path.engine.Plan;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Says where a child stands on its paths, in few words. */
@Component
class ChildWords {

    /** Stages longer ago than this are told without a week. */
    private static final int WEEKS_TOLD = 52;

    private static final String BETWEEN = " · ";

    private final Words words;

    ChildWords(Words words) {
        this.words = words;
    }

    /** The names of the paths that go on. */
    String paths(Language language, List<Plan> plans) {
        var names =
                goingOn(plans).map(plan -> plan.template().name().in(language)).collect(Collectors.joining(BETWEEN));
        return names.isEmpty() ? words.say(language, "caseload.child.no-path") : names;
    }

    /** Where the child stands on each; empty when it is on none. */
    String stages(Language language, List<Plan> plans, LocalDate today) {
        return goingOn(plans).map(plan -> stage(language, plan, today)).collect(Collectors.joining(BETWEEN));
    }

    private static Stream<Plan> goingOn(List<Plan> plans) {
        return plans.stream().filter(plan -> plan.over().isEmpty());
    }

    /** The present stage and its week, or that the path has not begun. */
    private String stage(Language language, Plan plan, LocalDate today) {
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
