package org.hearthway.child.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.child.Allergies;
import org.hearthway.child.ChildData;
import org.hearthway.child.Names;

/** What may be entered about a child. */
final class ChildRules {

    private static final int USED_NAME = 80;
    private static final int FAMILY_NAME = 120;
    private static final int OLDEST_YEARS = 25;
    private static final int MOST_ALLERGIES = 20;
    private static final int ALLERGY = 200;
    private static final int INTERPRETER = 60;

    private ChildRules() {}

    static void check(ChildData data, LocalDate today) {
        var problems = new ArrayList<Problem>();
        checkNames(data.names().stripped(), problems);
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
        checkAllergies(data.allergies(), problems);
        if (data.interpreter().strip().length() > INTERPRETER) {
            problems.add(Problem.at("interpreter", "child.problem.interpreter", INTERPRETER));
        }
        Invalid.ifAny(problems);
    }

    private static void checkNames(Names names, List<Problem> problems) {
        if (names.used().isEmpty() || names.used().length() > USED_NAME) {
            problems.add(Problem.at("usedName", "child.problem.used-name", USED_NAME));
        }
        if (names.given().length() > USED_NAME) {
            problems.add(Problem.at("givenName", "child.problem.given-name", USED_NAME));
        }
        if (names.surname().isEmpty() || names.surname().length() > FAMILY_NAME) {
            problems.add(Problem.at("familyName", "child.problem.family-name", FAMILY_NAME));
        }
        if (names.secondSurname().length() > FAMILY_NAME) {
            problems.add(Problem.at("secondSurname", "child.problem.second-surname", FAMILY_NAME));
        }
    }

    private static void checkAllergies(Allergies allergies, List<Problem> problems) {
        var known = allergies.known();
        if (known.size() > MOST_ALLERGIES
                || known.stream()
                        .anyMatch(each -> each.isBlank() || each.length() > ALLERGY || !each.equals(each.strip()))
                || (!allergies.asked() && !known.isEmpty())) {
            problems.add(Problem.at("allergies", "child.problem.allergies", MOST_ALLERGIES, ALLERGY));
        }
    }
}
