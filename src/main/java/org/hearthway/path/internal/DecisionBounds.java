package org.hearthway.path.internal;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.network.Span;
import org.springframework.stereotype.Component;

/** What may be decided for a path: the bounds of what a person types, each refusal with its bound and a way out. */
@Component
class DecisionBounds {

    private static final int REASON_LEAST = 3;
    private static final int REASON_MOST = 500;
    private static final int YEARS_BACK = 20;
    private static final int BEGIN_YEARS_AHEAD = 2;
    private static final int YEARS_AHEAD = 10;
    private static final int AWAY_YEARS_AHEAD = 2;
    private static final int AWAY_MOST_DAYS = 366;

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

    /** A path ends on a day from its first until today. */
    void closing(LocalDate begun, LocalDate day, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (day.isBefore(begun)) {
            problems.add(Problem.at("day", "path.problem.before-begin"));
        }
        if (day.isAfter(today)) {
            problems.add(Problem.at("day", "path.problem.ended-ahead", today));
        }
        Invalid.ifAny(problems);
    }

    /** Days away are not all over, not too many and not too far ahead. */
    void away(Span days, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (days.last().isBefore(today)) {
            problems.add(Problem.at("until", "path.problem.away-over", today));
        }
        if (days.last().isAfter(today.plusYears(AWAY_YEARS_AHEAD))) {
            problems.add(Problem.at("until", "path.problem.away-far", AWAY_YEARS_AHEAD));
        }
        if (ChronoUnit.DAYS.between(days.first(), days.last()) >= AWAY_MOST_DAYS) {
            problems.add(Problem.at("until", "path.problem.away-long", AWAY_MOST_DAYS));
        }
        Invalid.ifAny(problems);
    }

    void change(Plan plan, Change change, LocalDate begun, LocalDate today) {
        boolean onPlan = plan.stage(change.stage()).isPresent();
        boolean known = plan.template().stage(change.stage()).isPresent();
        if (change instanceof Change.Add ? onPlan || !known : !onPlan) {
            throw new Invalid(Problem.at("stage", "path.problem.stage"));
        }
        if (change instanceof Change.End end) {
            end(plan, end, begun, today);
        }
        if (change instanceof Change.OwnRule own) {
            rule(plan, own);
        }
        if (change instanceof Change.Fix fix) {
            day(fix.day(), begun, today);
        } else if (change instanceof Change.SetByHand byHand) {
            day(byHand.day(), begun, today);
        }
    }

    private static void end(Plan plan, Change.End end, LocalDate begun, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (plan.template()
                .stage(end.stage())
                .flatMap(s -> s.outcome(end.outcome()))
                .isEmpty()) {
            problems.add(Problem.at("outcome", "path.problem.outcome"));
        }
        if (end.day().isBefore(begun)) {
            problems.add(Problem.at("day", "path.problem.before-begin"));
        }
        if (end.day().isAfter(today)) {
            problems.add(Problem.at("day", "path.problem.ended-ahead", today));
        }
        Invalid.ifAny(problems);
    }

    private static void rule(Plan plan, Change.OwnRule own) {
        var rules =
                plan.template().stage(own.stage()).map(s -> s.timing().begins().size());
        if (own.at() < 0 || own.at() >= rules.orElse(0)) {
            throw new Invalid(Problem.at("stage", "path.problem.stage"));
        }
        if (!own.rule().isOrdered()) {
            throw new Invalid(Problem.at("usual", "path.problem.rule-order"));
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

    /** Refuses a plan of the team's own making in which a stage gets no day any more; what happened is not refused. */
    void clashes(Plan before, Plan after, Change change, Function<Clash, Bilingual> words) {
        if (change instanceof Change.Fix || change instanceof Change.End) {
            return;
        }
        var known = before.clashes().stream().map(Clash::stage).collect(Collectors.toSet());
        after.clashes().stream()
                .filter(clash -> !known.contains(clash.stage()))
                .findFirst()
                .ifPresent(clash -> {
                    throw new Invalid(Problem.at("day", "path.problem.clash", words.apply(clash)));
                });
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
