package org.hearthway.task.internal;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.ChildPlan;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.task.Task;
import org.hearthway.task.Task.OfStage;
import org.springframework.stereotype.Component;

/** Ties tasks to stages: the day of an open task moves with its stage, and rests while the stage is on no plan. */
@Component
class StagesOfTasks {

    private static final Viewer MACHINE = new Viewer.Machine("tasks");

    private final Plans plans;

    StagesOfTasks(Plans plans) {
        this.plans = plans;
    }

    /** The child's plans that go on; a path that ended asks nothing more. */
    List<Plan> plans(ChildId child) {
        return goingOn(child).stream().map(ChildPlan::plan).toList();
    }

    /** The same with what is known of each. */
    List<ChildPlan> goingOn(ChildId child) {
        return plans.plans(MACHINE, child).stream()
                .filter(on -> on.plan().over().isEmpty())
                .toList();
    }

    /** How a task names a stage. */
    static String name(Plan plan, Planned stage) {
        return plan.template().id() + "/" + stage.point();
    }

    /** The tie of a task that is given now. */
    Optional<OfStage> tie(ChildId child, Optional<String> stage) {
        return stage.map(name -> new OfStage(
                name, Optional.ofNullable(stages(child).get(name)).flatMap(StagesOfTasks::begins), false, true));
    }

    /** The tasks of one child as its plan has them today. */
    List<Task> followed(ChildId child, List<Task> tasks) {
        if (tasks.stream().noneMatch(StagesOfTasks::follows)) {
            return tasks;
        }
        var stages = stages(child);
        return tasks.stream().map(task -> followed(task, stages)).toList();
    }

    Task followed(Task task) {
        return followed(task.child(), List.of(task)).get(0);
    }

    /** The same with the day that it has today as its own: what ends keeps the day it had then. */
    Task settled(Task task) {
        var now = followed(task);
        return now.of()
                .map(of -> {
                    var begins = tie(task.child(), Optional.of(of.stage())).flatMap(OfStage::begins);
                    return now.on(now.due(), new OfStage(of.stage(), begins, of.asks(), of.onPlan()));
                })
                .orElse(now);
    }

    private static boolean follows(Task task) {
        return task.end().isEmpty() && task.of().isPresent();
    }

    private static Task followed(Task task, Map<String, Planned> stages) {
        if (!follows(task)) {
            return task;
        }
        var of = task.of().orElseThrow();
        var stage = Optional.ofNullable(stages.get(of.stage()));
        long moved = of.begins()
                .flatMap(then -> stage.flatMap(StagesOfTasks::begins).map(now -> ChronoUnit.DAYS.between(then, now)))
                .orElse(0L);
        return task.on(task.due().plusDays(moved), new OfStage(of.stage(), of.begins(), of.asks(), stage.isPresent()));
    }

    /** The first day; a stage that fits nowhere has none. */
    static Optional<LocalDate> begins(Planned stage) {
        return stage.clash().isPresent() ? Optional.empty() : Optional.of(stage.start());
    }

    private Map<String, Planned> stages(ChildId child) {
        var stages = new LinkedHashMap<String, Planned>();
        plans(child).forEach(plan -> plan.stages().forEach(stage -> stages.put(name(plan, stage), stage)));
        return stages;
    }
}
