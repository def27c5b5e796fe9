package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template;
import org.springframework.stereotype.Component;

/** What may be decided for a path: the bounds of what a person types, each refusal with its bound and a way out. */
@Component
class DecisionBounds {

    private static final int REASON_LEAST = 3;
    private static final int REASON_MOST = 500;
    private static final int YEARS_BACK = 20;
    private static final int BEGIN_YEARS_AHEAD = 2;
    private static final int YEARS_AHEAD = 10;

    void begin(Optional<Template> pathway, LocalDate day, String reason, LocalDate today) {
        var problems = new ArrayList<>(reasonProblems(reason));
        problems.addAll(beginProblems(pathway, day, today));
        Invalid.ifAny(problems);
    }

    /** The same without a reason, which is not needed while nothing is saved. */
    void outlook(Optional<Template> pathway, LocalDate day, LocalDate today) {
        Invalid.ifAny(beginProblems(pathway, day, today));
    }

    private static List<Problem> beginProblems(Optional<Template> pathway, LocalDate day, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (pathway.isEmpty()) {
            problems.add(Problem.at("pathway", "path.problem.pathway"));
        }
        if (day.isBefore(today.minusYears(YEARS_BACK)) || day.isAfter(today.plusYears(BEGIN_YEARS_AHEAD))) {
            problems.add(Problem.at("day", "path.problem.begin-day", YEARS_BACK, BEGIN_YEARS_AHEAD));
        }
        return problems;
    }

    void reason(String reason) {
        Invalid.ifAny(reasonProblems(reason));
    }

    private static List<Problem> reasonProblems(String reason) {
        var length = reason.strip().length();
        return length < REASON_LEAST || length > REASON_MOST
                ? List.of(Problem.at("reason", "path.problem.reason", REASON_LEAST, REASON_MOST))
                : List.of();
    }

    void change(Plan plan, Change change, LocalDate begun, LocalDate today) {
        if (plan.stage(change.stage()).isEmpty()) {
            throw new Invalid(Problem.at("stage", "path.problem.stage"));
        }
        if (change instanceof Change.Fix fix) {
            day(fix.day(), begun, today);
        } else if (change instanceof Change.SetByHand byHand) {
            day(byHand.day(), begun, today);
        }
    }

    private static void day(LocalDate day, LocalDate begun, LocalDate today) {
        if (day.isBefore(begun)) {
            throw new Invalid(Problem.at("day", "path.problem.before-begin"));
        }
        if (day.isAfter(today.plusYears(YEARS_AHEAD))) {
            throw new Invalid(Problem.at("day", "path.problem.too-far", YEARS_AHEAD));
        }
    }

    /** Refuses a change after which a stage would begin before the one in front of it. */
    void order(Plan before, Plan after) {
        if (before.outOfOrder().isEmpty()) {
            after.outOfOrder().ifPresent(late -> {
                var front = after.stages().get(after.stages().indexOf(late) - 1);
                throw new Invalid(Problem.at(
                        "day",
                        "path.problem.order",
                        late.stage().name(),
                        late.start(),
                        front.stage().name(),
                        front.start()));
            });
        }
    }
}
