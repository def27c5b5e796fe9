package org.hearthway.surveillance.internal;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.engine.Watched;

/** What may be entered about a check. */
final class CheckRules {

    private static final int WHO = 200;
    private static final int NOTE = 500;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int STRAIGHT_ANGLE = 180;

    private CheckRules() {}

    /**
     * Refuses what is out of bounds, all at once.
     *
     * @param others days of the other checks of the same child
     */
    static void check(CheckData data, LocalDate birth, LocalDate today, List<LocalDate> others) {
        var problems = new ArrayList<Problem>();
        if (data.day().isAfter(today) || data.day().isBefore(birth)) {
            problems.add(Problem.at("day", "surveillance.problem.day"));
        } else if (others.contains(data.day())) {
            problems.add(Problem.at("day", "surveillance.problem.day-twice"));
        }
        if (data.who().isBlank() || data.who().strip().length() > WHO) {
            problems.add(Problem.at("who", "surveillance.problem.who", WHO));
        }
        migration("left", data, data.left(), problems);
        migration("right", data, data.right(), problems);
        if (data.cobb()
                .filter(angle -> data.watched() != Watched.SPINE || angle < 0 || angle > STRAIGHT_ANGLE)
                .isPresent()) {
            problems.add(Problem.at("cobb", "surveillance.problem.cobb", STRAIGHT_ANGLE));
        }
        if (data.note().strip().length() > NOTE) {
            problems.add(Problem.at("note", "surveillance.problem.note", NOTE));
        }
        Invalid.ifAny(problems);
    }

    private static void migration(String field, CheckData data, Optional<BigDecimal> percent, List<Problem> problems) {
        var wrong = percent.filter(typed -> data.watched() != Watched.HIPS
                || typed.signum() < 0
                || typed.compareTo(HUNDRED) > 0
                || typed.stripTrailingZeros().scale() > 1);
        if (wrong.isPresent()) {
            problems.add(Problem.at(field, "surveillance.problem.migration", HUNDRED));
        }
    }
}
