package org.hearthway.child.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.child.Homes.Home;

/** What may be entered about a caregiver's home. */
final class HomeRules {

    static final int RELATION = 60;
    static final int ADDRESS = 300;
    static final int INTERPRETER = 60;
    static final int NOTE = 2000;

    /** Turns are counted from a week near enough to be checked against a family's calendar. */
    static final int TURNS_YEARS = 2;

    private HomeRules() {}

    static void check(Home home, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (home.relation().isEmpty() || home.relation().length() > RELATION) {
            problems.add(Problem.at("relation", "child.problem.relation", RELATION));
        }
        if (home.address().length() > ADDRESS) {
            problems.add(Problem.at("address", "child.problem.address", ADDRESS));
        }
        if (home.interpreter().length() > INTERPRETER) {
            problems.add(Problem.at("interpreter", "child.problem.interpreter", INTERPRETER));
        }
        if (home.note().length() > NOTE) {
            problems.add(Problem.at(
                    "note", "child.problem.home-note", NOTE, home.note().length()));
        }
        var nights = home.nights();
        if (nights.turns().isEmpty() && !nights.otherWeek().isEmpty()) {
            problems.add(Problem.at("turns", "child.problem.turns-missing"));
        }
        if (nights.turns()
                .filter(day -> day.isBefore(today.minusYears(TURNS_YEARS)) || day.isAfter(today.plusYears(TURNS_YEARS)))
                .isPresent()) {
            problems.add(Problem.at("turns", "child.problem.turns", TURNS_YEARS));
        }
        Invalid.ifAny(problems);
    }
}
