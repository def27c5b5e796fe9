package org.hearthway.task.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standings;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans.ChildPlan;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template.FamilyTask;
import org.hearthway.task.Assignee;
import org.hearthway.task.StageTasks;
import org.hearthway.task.Task;
import org.hearthway.task.TaskId;
import org.hearthway.task.Tasks;
import org.hearthway.task.events.TaskWorked;
import org.hearthway.task.internal.TaskStore.Step;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The tasks that stages ask by themselves: read off the plan, and found again among the tasks by stage and words. */
@Service
@Transactional
class TicksOfStages implements StageTasks {

    private final Tasks tasks;
    private final TaskStore store;
    private final StagesOfTasks stages;
    private final Standings standings;
    private final SignOff signOff;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    TicksOfStages(
            Tasks tasks,
            TaskStore store,
            StagesOfTasks stages,
            Standings standings,
            SignOff signOff,
            ClinicSettings clinic,
            Gate gate,
            Clock clock,
            ApplicationEventPublisher events) {
        this.tasks = tasks;
        this.store = store;
        this.stages = stages;
        this.standings = standings;
        this.signOff = signOff;
        this.clinic = clinic;
        this.gate = gate;
        this.clock = clock;
        this.events = events;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Asked> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return standings.now(viewer, child).status().asksTheFamily() ? asked(viewer, child) : List.of();
    }

    private List<Asked> asked(Viewer viewer, ChildId child) {
        var kept = stages.followed(child, store.ofChild(child)).stream()
                .filter(task -> GivenTasks.isAskedOf(viewer, task))
                .toList();
        var all = new ArrayList<Asked>();
        for (var on : stages.goingOn(child)) {
            if (isShown(on.plan())) {
                on.plan().next().stream()
                        // what was done before the path began here asks nobody any more
                        .filter(stage -> !stage.isDoneBefore())
                        .forEach(stage -> all.addAll(asked(on, stage, kept)));
            }
        }
        return List.copyOf(all);
    }

    private boolean isShown(Plan plan) {
        var template = plan.template();
        return signOff.isShown(new SignOff.Item("paths", template.id(), template.version()));
    }

    private List<Asked> asked(ChildPlan on, Planned stage, List<Task> kept) {
        var name = StagesOfTasks.name(on.plan(), stage);
        var family = stage.stage().duties().family();
        var all = new ArrayList<Asked>();
        for (int place = 0; place < family.size(); place++) {
            var says = family.get(place).does();
            var task = kept.stream()
                    .filter(one -> isThis(one, name, says) && !isOfAnEarlierRun(one, on, stage))
                    .max(Comparator.comparing(Task::givenAt));
            if (task.filter(this::isPutOff).isEmpty()) {
                all.add(new Asked(name, place, says, due(stage, family.get(place), task), task));
            }
        }
        return all;
    }

    private static boolean isThis(Task task, String stage, Bilingual says) {
        return task.stage().filter(stage::equals).isPresent()
                && Arrays.stream(Language.values())
                        .filter(task.says()::isIn)
                        .allMatch(language -> task.says().in(language).equals(says.in(language)));
    }

    /** Done, ahead of the stage or in it, before a path begun again or a way back opened the stage anew. */
    private static boolean isOfAnEarlierRun(Task task, ChildPlan on, Planned stage) {
        return task.end()
                .filter(end -> on.isOfAnEarlierRun(stage.stage(), end.at()))
                .isPresent();
    }

    private boolean isPutOff(Task task) {
        return task.end().map(end -> end.outcome() == Task.Outcome.NOT_NEEDED).orElseGet(() -> !task.isOpenOn(today()));
    }

    /** The day that the team gave stands before the path's own. */
    private static Optional<LocalDate> due(Planned stage, FamilyTask asked, Optional<Task> task) {
        return task.filter(one -> !one.isAskedByItsStage())
                .map(Task::wantedBy)
                .or(() -> asked.due().flatMap(gap -> StagesOfTasks.begins(stage).map(day -> day.plus(gap))));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    @Override
    public void tick(Viewer viewer, ChildId child, String stage, int place) {
        gate.require(viewer, Action.TICK_TASK, child);
        var asked = asked(viewer, child).stream()
                .filter(one -> one.stage().equals(stage) && one.place() == place)
                .findFirst()
                .orElseThrow(Overtaken::new);
        if (asked.isDone()) {
            // the same tick twice, as two taps on a slow phone send it, is one tick
            return;
        }
        asked.task()
                .ifPresentOrElse(
                        open -> tasks.tick(viewer, open.id(), open.version()), () -> add(viewer, child, asked));
    }

    private void add(Viewer viewer, ChildId child, Asked asked) {
        var now = clock.instant();
        var by = GivenTasks.account(viewer);
        var ticked = new Task(
                TaskId.random(),
                child,
                new Assignee.Family(),
                new Task.Says(asked.says().en(), asked.says().es()),
                asked.due().orElseGet(this::today),
                stages.tie(child, Optional.of(asked.stage())),
                by,
                now,
                Optional.empty(),
                Optional.of(new Task.End(Task.Outcome.DONE, by, now, "", true)),
                1);
        store.insert(ticked, Step.TICKED, viewer);
        events.publishEvent(
                new TaskWorked(child, viewer, now, ticked.id().value(), Step.TICKED.name(), Optional.empty()));
    }
}
