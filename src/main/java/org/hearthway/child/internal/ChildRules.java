package org.hearthway.child.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.child.ChildData;

/** What may be entered about a child. */
final class ChildRules {

    private static final int USED_NAME = 80;
    private static final int FAMILY_NAME = 120;
    private static final int OLDEST_YEARS = 25;

    private ChildRules() {}

    static void check(ChildData data, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (data.usedName().isBlank() || data.usedName().strip().length() > USED_NAME) {
            problems.add(Problem.at("usedName", "child.problem.used-name", USED_NAME));
        }
        if (data.familyName().isBlank() || data.familyName().strip().length() > FAMILY_NAME) {
            problems.add(Problem.at("familyName", "child.problem.family-name", FAMILY_NAME));
        }
        if (data.birthDate().isAfter(today)) {
            problems.add(Problem.at("birthDate", "child.problem.birth-future"));
        } else if (data.birthDate().isBefore(today.minusYears(OLDEST_YEARS))) {
            problems.add(Problem.at("birthDate", "child.problem.birth-old", OLDEST_YEARS));
        }
        if (data.gmfcs().filter(level -> level < 1 || level > 5).isPresent()) {
            problems.add(Problem.at("gmfcs", "child.problem.gmfcs"));
        }
        if (data.skinTone() < 1 || data.skinTone() > 4) {
            problems.add(Problem.at("skinTone", "child.problem.skin-tone"));
        }
        Invalid.ifAny(problems);
    }
}
