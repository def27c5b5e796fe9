package org.hearthway.task.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standings;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.TallyChanged;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans;
import org.hearthway.task.Task;
import org.hearthway.task.TaskWords;
import org.hearthway.task.Tasks;
import org.hearthway.words.Words;

/** A child's tasks in the folder: what is open, what ended and how, and beside it the form that gives one. */
@Route("staff/child/:child/tasks")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class TasksView extends Div implements BeforeEnterObserver, HasDynamicTitle, TaskCard.Acts {

    private final transient Tasks tasks;
    private final transient TaskWords taskWords;
    private final transient Plans plans;
    private final transient Standings standings;
    private final transient Gate gate;
    private final transient Words words;
    private final transient ClinicSettings clinic;
    private final transient Clock clock;
    private final Viewer.Person viewer;
    private final Div list = Tags.div("hw-tasklist");
    private final Div beside = new Div();
    private boolean unfolded;
    private transient ChildId child = new ChildId(new UUID(0, 0));

    TasksView(
            Tasks tasks,
            TaskWords taskWords,
            Plans plans,
            Standings standings,
            Gate gate,
            Words words,
            ClinicSettings clinic,
            Clock clock,
            SignedIn signedIn) {
        this.tasks = tasks;
        this.taskWords = taskWords;
        this.plans = plans;
        this.standings = standings;
        this.gate = gate;
        this.words = words;
        this.clinic = clinic;
        this.clock = clock;
        this.viewer = signedIn.require();
        addClassName("hw-worksheet");
        add(
                Tags.div("hw-desk", Tags.div("hw-cols u-side24", list, beside)),
                new KeyBar().remark(say("task.keys.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say("task.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        drawList();
        drawForm(Optional.empty());
    }

    private void drawList() {
        list.removeAll();
        var all = tasks.of(viewer, child);
        var open = all.stream().filter(task -> task.end().isEmpty()).toList();
        var over = all.stream().filter(task -> task.end().isPresent()).toList();
        if (!standings.now(viewer, child).status().asksTheFamily()) {
            list.add(Tags.div("hw-banner u-mb2", Icon.PAUSE.draw(), Tags.div("", Tags.span("", say("task.quiet")))));
        }
        list.add(
                Tags.div("hw-colh", Tags.h2("", say("task.open")), Tags.span("hw-quiet", String.valueOf(open.size()))));
        if (open.isEmpty()) {
            list.add(Tags.p("hw-quiet", say("task.none")));
        }
        draw(open, list);
        if (!over.isEmpty()) {
            var past = new NativeDetails(words.say(viewer.language(), "task.over", over.size()));
            past.addClassNames("hw-unfold", "u-mt5");
            past.setOpen(unfolded);
            past.addToggleListener(toggled -> unfolded = toggled.isOpened());
            var cards = new Div();
            draw(over, cards);
            past.setContent(cards);
            list.add(past);
        }
    }

    private void draw(List<Task> some, Div into) {
        var telling = new TaskCard.Telling(words, viewer, taskWords, clinic.zone(), today(), stages());
        var acts = gate.allows(viewer, Action.END_TASK, child)
                ? Optional.<TaskCard.Acts>of(this)
                : Optional.<TaskCard.Acts>empty();
        some.forEach(task -> into.add(new TaskCard(telling, task, acts)));
    }

    private Map<String, String> stages() {
        var stages = new LinkedHashMap<String, String>();
        plans.plans(viewer, child).stream()
                .map(Plans.ChildPlan::plan)
                .forEach(plan -> plan.next()
                        .forEach(stage -> stages.put(
                                plan.template().id() + "/" + stage.point(),
                                stage.stage().name().in(viewer.language()))));
        return stages;
    }

    private void drawForm(Optional<Task> known) {
        beside.removeAll();
        if (!gate.allows(viewer, Action.GIVE_TASK, child)) {
            return;
        }
        var offer = new GiveForm.Offer(
                tasks.choices(viewer, child), tasks.ready(viewer, child), stages(), to -> taskWords.to(viewer, to));
        beside.add(new GiveForm(words, viewer.language(), offer, known, new GiveForm.Acts() {
            @Override
            public void take(Tasks.Asked asked) {
                save(known, asked);
            }

            @Override
            public void leave() {
                drawForm(Optional.empty());
            }
        }));
    }

    private void save(Optional<Task> known, Tasks.Asked asked) {
        try {
            known.ifPresentOrElse(
                    task -> tasks.change(viewer, task.id(), asked, task.version()),
                    () -> tasks.give(viewer, child, asked));
            Told.done(say(known.isPresent() ? "task.changed" : "task.was-given"));
            drawForm(Optional.empty());
        } catch (Overtaken overtaken) {
            // what was typed stays; the list beside it shows what came in between
            Told.couldNot(say("task.overtaken"));
        }
        drawList();
        TallyChanged.tell();
    }

    @Override
    public void done(Task task) {
        work("task.was-done", () -> tasks.end(viewer, task.id(), Task.Outcome.DONE, "", task.version()));
    }

    @Override
    public void notNeeded(Task task) {
        new TaskForms(words, viewer.language())
                .notNeeded(
                        about(task),
                        reason -> work(
                                "task.was-ended",
                                () -> tasks.end(viewer, task.id(), Task.Outcome.NOT_NEEDED, reason, task.version())));
    }

    @Override
    public void setAside(Task task) {
        new TaskForms(words, viewer.language())
                .setAside(
                        about(task),
                        today(),
                        (until, reason) -> work(
                                "task.was-aside",
                                () -> tasks.setAside(viewer, task.id(), until, reason, task.version())));
    }

    @Override
    public void change(Task task) {
        drawForm(Optional.of(task));
    }

    @Override
    public void takeBack(Task task) {
        work("task.was-opened", () -> tasks.takeBack(viewer, task.id(), task.version()));
    }

    private String about(Task task) {
        return task.says().in(viewer.language());
    }

    private void work(String done, Runnable act) {
        try {
            act.run();
            Told.done(say(done));
        } catch (Overtaken overtaken) {
            Told.couldNot(say("task.overtaken"));
        }
        drawList();
        TallyChanged.tell();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private String say(String key) {
        return words.say(viewer.language(), key);
    }
}
