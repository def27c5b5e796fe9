package org.hearthway.task.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.path.Plans;
import org.hearthway.task.Tasks;
import org.hearthway.task.Tasks.Asked;
import org.hearthway.task.Tasks.Choice;
import org.springframework.stereotype.Component;

/** What a task may be: the bounds, each named in the answer. */
@Component
class TaskRules {

    private static final Viewer MACHINE = new Viewer.Machine("tasks");

    private final Asking asking;
    private final Plans plans;
    private final ClinicSettings clinic;
    private final Clock clock;

    TaskRules(Asking asking, Plans plans, ClinicSettings clinic, Clock clock) {
        this.asking = asking;
        this.plans = plans;
        this.clinic = clinic;
        this.clock = clock;
    }

    LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    void check(ChildId child, Asked asked) {
        var problems = new ArrayList<Problem>();
        var choice = asking.choices(child).stream()
                .filter(one -> one.to().equals(asked.to()))
                .findFirst();
        if (choice.isEmpty()) {
            problems.add(
                    Problem.at("to", asked.to().isOfTheFamily() ? "task.problem.to.family" : "task.problem.to.team"));
        }
        problems.addAll(words(asked, choice.map(Choice::reads).orElse(Set.of())));
        due(asked.due()).ifPresent(problems::add);
        asked.stage()
                .filter(stage -> !isOfThePath(child, stage))
                .ifPresent(other -> problems.add(Problem.at("stage", "task.problem.stage")));
        Invalid.ifAny(problems);
    }

    private static List<Problem> words(Asked asked, Set<Language> reads) {
        var problems = new ArrayList<Problem>();
        for (var language : Language.values()) {
            var typed = language == Language.EN ? asked.en() : asked.es();
            if (typed.length() > Tasks.LONGEST) {
                problems.add(Problem.at(language.tag(), "task.problem.long", Tasks.LONGEST, typed.length()));
            }
            if (typed.isEmpty() && reads.contains(language)) {
                problems.add(Problem.at(language.tag(), "task.problem.read." + language.tag()));
            }
        }
        if (problems.isEmpty() && asked.en().isEmpty() && asked.es().isEmpty()) {
            problems.add(Problem.at("en", "task.problem.empty"));
        }
        return problems;
    }

    private Optional<Problem> due(LocalDate due) {
        var last = today().plusYears(Tasks.YEARS_AHEAD);
        if (due.isBefore(today())) {
            return Optional.of(Problem.at("due", "task.problem.past", today()));
        }
        return due.isAfter(last)
                ? Optional.of(Problem.at("due", "task.problem.far", Tasks.YEARS_AHEAD))
                : Optional.empty();
    }

    private boolean isOfThePath(ChildId child, String stage) {
        return plans.plans(MACHINE, child).stream()
                .map(Plans.ChildPlan::plan)
                .anyMatch(plan -> plan.stages().stream()
                        .anyMatch(known -> StagesOfTasks.name(plan, known).equals(stage)));
    }

    void checkReason(String reason) {
        reason(reason).ifPresent(problem -> {
            throw new Invalid(problem);
        });
    }

    void checkAside(LocalDate until, String reason) {
        var problems = new ArrayList<Problem>();
        var last = today().plusYears(Tasks.YEARS_ASIDE);
        if (!until.isAfter(today()) || until.isAfter(last)) {
            problems.add(Problem.at("until", "task.problem.until", today().plusDays(1), Tasks.YEARS_ASIDE));
        }
        reason(reason).ifPresent(problems::add);
        Invalid.ifAny(problems);
    }

    private static Optional<Problem> reason(String reason) {
        return reason.length() < Tasks.REASON_MIN || reason.length() > Tasks.REASON_MAX
                ? Optional.of(Problem.at(
                        "reason", "task.problem.reason", Tasks.REASON_MIN, Tasks.REASON_MAX, reason.length()))
                : Optional.empty();
    }
}
