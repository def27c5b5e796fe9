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
import org.hearthway.path.Plans.Start;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Course;
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

    void begin(Optional<Template> pathway, Start start, String reason, LocalDate today) {
        var problems = new ArrayList<>(reasonProblems(reason));
        problems.addAll(beginProblems(pathway, start, today));
        Invalid.ifAny(problems);
    }

    /** The same without a reason, which is not needed while nothing is saved. */
    void outlook(Optional<Template> pathway, Start start, LocalDate today) {
        Invalid.ifAny(beginProblems(pathway, start, today));
    }

    private static List<Problem> beginProblems(Optional<Template> pathway, Start start, LocalDate today) {
        var problems = new ArrayList<Problem>();
        var day = start.day();
        if (pathway.isEmpty()) {
            problems.add(Problem.at("pathway", "path.problem.pathway"));
        }
        if (day.isBefore(today.minusYears(YEARS_BACK)) || day.isAfter(today.plusYears(BEGIN_YEARS_AHEAD))) {
            problems.add(Problem.at("day", "path.problem.begin-day", YEARS_BACK, BEGIN_YEARS_AHEAD));
        }
        pathway.ifPresent(path -> problems.addAll(stageProblems(path, start, today)));
        return problems;
    }

    private static List<Problem> stageProblems(Template path, Start start, LocalDate today) {
        var at = start.stage().orElse(path.stages().get(0).id());
        if (path.stage(at).isEmpty()) {
            return List.of(Problem.at("stage", "path.problem.stage"));
        }
        var front = path.before(at);
        if (!front.stream()
                .map(Template.Stage::id)
                .toList()
                .containsAll(start.before().keySet())) {
            return List.of(Problem.at("stage", "path.problem.stage"));
        }
        var problems = new ArrayList<Problem>();
        var first = today.minusYears(YEARS_BACK);
        var last = start.day().isBefore(today) ? start.day() : today;
        for (var stage : front) {
            var done = Optional.ofNullable(start.before().get(stage.id()));
            if (done.isPresent()) {
                if (done.get().isBefore(first) || done.get().isAfter(last)) {
                    problems.add(
                            Problem.at("before/" + stage.id(), "path.problem.before-day", stage.name(), first, last));
                }
                // one done later cannot stand in front of one done earlier
                first = done.get().isAfter(first) ? done.get() : first;
            }
        }
        path.neededBefore(at, start.before().keySet())
                .forEach((stage, behind) -> problems.add(
                        Problem.at("before/" + stage.id(), "path.problem.before-needed", stage.name(), behind.name())));
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

    void change(Plan plan, Change change, Course course, LocalDate today) {
        var begun = course.begun();
        if (change instanceof Change.Fix fix && course.before().contains(fix.stage())) {
            before(plan, fix, today);
            return;
        }
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

    /** What was done before the path began here has a day before that, and was not on the plan without one. */
    private static void before(Plan plan, Change.Fix fix, LocalDate today) {
        var first = today.minusYears(YEARS_BACK);
        if (fix.day().isBefore(first) || fix.day().isAfter(today)) {
            var stage = plan.template().stage(fix.stage()).orElseThrow();
            throw new Invalid(Problem.at("day", "path.problem.before-day", stage.name(), first, today));
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
