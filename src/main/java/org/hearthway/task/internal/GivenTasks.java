package org.hearthway.task.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households;
import org.hearthway.child.Standings;
import org.hearthway.path.Plans;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.TaskId;
import org.hearthway.task.Tasks;
import org.hearthway.task.events.TaskGiven;
import org.hearthway.task.events.TaskWorked;
import org.hearthway.task.internal.TaskStore.Step;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The tasks: each change is checked, added as a version and told in one transaction. */
@Service
@Transactional
class GivenTasks implements Tasks {

    private static final Comparator<Task> BY_DAY =
            Comparator.comparing(Task::wantedBy).thenComparing(Task::givenAt);

    private final TaskStore store;
    private final TaskRules rules;
    private final StagesOfTasks stages;
    private final Asking asking;
    private final ReadyTexts texts;
    private final Plans plans;
    private final Households households;
    private final Standings standings;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    GivenTasks(
            TaskStore store,
            TaskRules rules,
            StagesOfTasks stages,
            Asking asking,
            ReadyTexts texts,
            Plans plans,
            Households households,
            Standings standings,
            Gate gate,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.store = store;
        this.rules = rules;
        this.stages = stages;
        this.asking = asking;
        this.texts = texts;
        this.plans = plans;
        this.households = households;
        this.standings = standings;
        this.gate = gate;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Task> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var all = kept(child).stream()
                .filter(task -> !isOfTheOtherHome(viewer, task))
                .toList();
        return Stream.concat(
                        all.stream().filter(task -> task.end().isEmpty()).sorted(BY_DAY),
                        all.stream()
                                .filter(task -> task.end().isPresent())
                                .sorted(Comparator.comparing(GivenTasks::endedAt)
                                        .reversed()))
                .toList();
    }

    /** As the child's plan has them today; what a stage asks by itself is a task only once it was ticked. */
    private List<Task> kept(ChildId child) {
        return stages.followed(child, store.ofChild(child)).stream()
                .filter(task -> !task.isAskedByItsStage() || task.end().isPresent())
                .toList();
    }

    private static Instant endedAt(Task task) {
        return task.end().map(Task.End::at).orElse(Instant.MAX);
    }

    /** What is asked of one caregiver no other caregiver sees, be it a colleague of the team besides. */
    private boolean isOfTheOtherHome(Viewer viewer, Task task) {
        return task.to() instanceof Assignee.Caregiver asked
                && viewer instanceof Viewer.Person person
                && !person.account().equals(asked.account())
                && households.reach(person.account(), task.child()).isPresent();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Task> forFamily(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        if (!standings.now(viewer, child).status().asksTheFamily()) {
            return List.of();
        }
        return kept(child).stream()
                .filter(task -> isAskedOf(viewer, task) && !task.isAskedByItsStage())
                .filter(task -> task.isOpenOn(rules.today()) || canBeTakenBack(task))
                .sorted(BY_DAY)
                .toList();
    }

    static boolean isAskedOf(Viewer viewer, Task task) {
        return task.to() instanceof Assignee.Family
                || (task.to() instanceof Assignee.Caregiver asked
                        && viewer instanceof Viewer.Person person
                        && person.account().equals(asked.account()));
    }

    private boolean canBeTakenBack(Task task) {
        return task.end()
                .filter(Task.End::ticked)
                .filter(end -> !clock.instant().isAfter(end.at().plus(UNDO)))
                .isPresent();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Task> mine(Viewer.Person viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var atRest = standings.notActive(viewer).keySet();
        return store.open().stream()
                .filter(task -> isFor(viewer, task.to()))
                .map(stages::followed)
                .filter(task -> task.isOpenOn(rules.today()) && !atRest.contains(task.child()))
                .filter(task -> gate.allows(viewer, Action.SEE_FOLDER, task.child()))
                .sorted(BY_DAY)
                .toList();
    }

    private static boolean isFor(Viewer.Person viewer, Assignee to) {
        return (to instanceof Assignee.Person person && person.account().equals(viewer.account()))
                || (to instanceof Assignee.AnyOf any && viewer.is(any.role()));
    }

    @Override
    @Transactional(readOnly = true)
    public Set<ChildId> withFamilyTasks(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        return store.open().stream()
                .filter(task -> task.to().isOfTheFamily() && !task.isAskedByItsStage())
                .map(Task::child)
                .collect(Collectors.toUnmodifiableSet());
    }

    @Override
    @Transactional(readOnly = true)
    public List<Choice> choices(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.GIVE_TASK, child);
        return asking.choices(child);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Ready> ready(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.GIVE_TASK, child);
        var now = plans.plans(viewer, child).stream().map(Plans.ChildPlan::plan).toList();
        return texts.ready(now, rules.today());
    }

    @Override
    public TaskId give(Viewer viewer, ChildId child, Asked typed) {
        gate.require(viewer, Action.GIVE_TASK, child);
        var asked = stripped(typed);
        rules.check(child, asked);
        var now = clock.instant();
        var task = new Task(
                TaskId.random(),
                child,
                asked.to(),
                new Task.Says(asked.en(), asked.es()),
                asked.due(),
                stages.tie(child, asked.stage()),
                account(viewer),
                now,
                Optional.empty(),
                Optional.empty(),
                1);
        store.insert(task, Step.GIVEN, viewer);
        events.publishEvent(
                new TaskGiven(child, viewer, now, task.id().value(), told(task, "task.told.given", asked.due())));
        return task.id();
    }

    private static Asked stripped(Asked typed) {
        return new Asked(typed.to(), typed.en().strip(), typed.es().strip(), typed.due(), typed.stage());
    }

    /** What changed is told to everybody who sees the family's pages, so only what the whole family is asked. */
    private Optional<Bilingual> told(Task task, String key, Object... args) {
        return task.to() instanceof Assignee.Family ? Optional.of(words.both(key, args)) : Optional.empty();
    }

    @Override
    public void change(Viewer viewer, TaskId id, Asked typed, long seen) {
        var old = toWork(viewer, Action.GIVE_TASK, id);
        requireOpen(old, seen);
        var asked = stripped(typed);
        rules.check(old.child(), asked);
        var next = new Task(
                id,
                old.child(),
                asked.to(),
                new Task.Says(asked.en(), asked.es()),
                asked.due(),
                stages.tie(old.child(), asked.stage()),
                old.givenBy(),
                old.givenAt(),
                Optional.empty(),
                Optional.empty(),
                seen + 1);
        add(viewer, next, Step.CHANGED, toldOfChange(old, next));
    }

    private Optional<Bilingual> toldOfChange(Task old, Task next) {
        if (old.to().equals(next.to())) {
            return told(next, "task.told.changed", next.due());
        }
        return told(next, "task.told.given", next.due()).or(() -> told(old, "task.told.off"));
    }

    @Override
    public void end(Viewer viewer, TaskId id, Task.Outcome outcome, String reason, long seen) {
        var old = toWork(viewer, Action.END_TASK, id);
        requireOpen(old, seen);
        var done = outcome == Task.Outcome.DONE;
        var why = done ? "" : reason.strip();
        if (!done) {
            rules.checkReason(why);
        }
        var end = new Task.End(outcome, account(viewer), clock.instant(), why, false);
        add(
                viewer,
                next(stages.settled(old), Optional.empty(), Optional.of(end)),
                done ? Step.DONE : Step.NOT_NEEDED,
                told(old, "task.told.off"));
    }

    @Override
    public void setAside(Viewer viewer, TaskId id, LocalDate until, String typed, long seen) {
        var old = toWork(viewer, Action.END_TASK, id);
        requireOpen(old, seen);
        var reason = typed.strip();
        rules.checkAside(until, reason);
        add(
                viewer,
                next(old, Optional.of(new Task.Aside(until, reason)), Optional.empty()),
                Step.SET_ASIDE,
                told(old, "task.told.later", until));
    }

    @Override
    public void tick(Viewer viewer, TaskId id, long seen) {
        var old = toWork(viewer, Action.TICK_TASK, id);
        if (!isAskedOf(viewer, old)) {
            throw new NotAvailable();
        }
        if (old.version() == seen + 1 && old.end().filter(Task.End::ticked).isPresent()) {
            // the same tick twice, as two taps on a slow phone send it, is one tick
            return;
        }
        requireOpen(old, seen);
        var end = new Task.End(Task.Outcome.DONE, account(viewer), clock.instant(), "", true);
        add(viewer, next(stages.settled(old), Optional.empty(), Optional.of(end)), Step.TICKED, Optional.empty());
    }

    @Override
    public void takeBack(Viewer viewer, TaskId id, long seen) {
        var old = store.find(id).orElseThrow(NotAvailable::new);
        var team = gate.allows(viewer, Action.END_TASK, old.child());
        if (!team) {
            gate.require(viewer, Action.TICK_TASK, old.child());
        }
        if (isOfTheOtherHome(viewer, old) || (!team && !isAskedOf(viewer, old))) {
            throw new NotAvailable();
        }
        var isOpen = old.end().isEmpty() && old.aside().isEmpty();
        if (old.version() != seen || isOpen || (!team && !canBeTakenBack(old))) {
            throw new Overtaken();
        }
        var open = next(old, Optional.empty(), Optional.empty());
        add(
                viewer,
                open,
                Step.TAKEN_BACK,
                team && !open.isAskedByItsStage()
                        ? told(open, "task.told.given", stages.followed(open).due())
                        : Optional.empty());
    }

    private Task toWork(Viewer viewer, Action action, TaskId id) {
        var task = store.find(id).orElseThrow(NotAvailable::new);
        gate.require(viewer, action, task.child());
        if (isOfTheOtherHome(viewer, task)) {
            throw new NotAvailable();
        }
        return task;
    }

    private static void requireOpen(Task task, long seen) {
        if (task.version() != seen || task.end().isPresent()) {
            throw new Overtaken();
        }
    }

    private static Task next(Task old, Optional<Task.Aside> aside, Optional<Task.End> end) {
        return new Task(
                old.id(),
                old.child(),
                old.to(),
                old.says(),
                old.due(),
                old.of(),
                old.givenBy(),
                old.givenAt(),
                aside,
                end,
                old.version() + 1);
    }

    private void add(Viewer viewer, Task task, Step step, Optional<Bilingual> told) {
        var now = clock.instant();
        store.insertVersion(task, step, viewer, now);
        events.publishEvent(new TaskWorked(task.child(), viewer, now, task.id().value(), step.name(), told));
    }

    static AccountId account(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person.account();
        }
        throw new NotAvailable();
    }
}
