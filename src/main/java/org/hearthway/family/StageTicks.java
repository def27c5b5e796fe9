package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Overtaken;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.task.StageTasks;
import org.hearthway.task.StageTasks.Asked;
import org.hearthway.task.Task;
import org.hearthway.task.Tasks;

/** What a stage asks of the family: each with its day and a stone to tick; what was done earlier is folded. */
@org.springframework.stereotype.Component
class StageTicks {

    private final StageTasks stages;
    private final Tasks tasks;
    private final Gate gate;

    StageTicks(StageTasks stages, Tasks tasks, Gate gate) {
        this.stages = stages;
        this.tasks = tasks;
        this.gate = gate;
    }

    /**
     * The list; empty when the stage asks nothing.
     *
     * @param name of the stage, as tasks have it
     * @param stands whether the stage's day stands; until then no day of its tasks does
     * @param again draws the page anew after a press
     */
    Optional<Component> list(Reader reader, String name, boolean stands, Runnable again) {
        var all = stages.of(reader.viewer(), reader.id()).stream()
                .filter(asked -> asked.stage().equals(name))
                .toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        var mayTick = gate.allows(reader.viewer(), Action.TICK_TASK, reader.id());
        var folded = all.stream()
                .filter(asked -> asked.isDone() && !canBeTakenBack(reader, asked))
                .toList();
        var section = Tags.div("hw-need");
        var toTick = rows(
                all,
                asked -> !folded.contains(asked) && hasDay(asked),
                asked -> row(reader, asked, stands, mayTick, again));
        var always = rows(all, asked -> !hasDay(asked), asked -> Bits.el("li", "", reader.text(asked.says())));
        add(section, reader.say("family.todo.title"), toTick, "hw-tasks");
        if (!folded.isEmpty()) {
            section.add(folded(reader, folded));
        }
        add(section, reader.say("family.path.always"), always, "hw-always");
        return Optional.of(section);
    }

    /** What has no day is not done once: it goes on as long as the stage. */
    private static boolean hasDay(Asked asked) {
        return asked.due().isPresent() || asked.isDone();
    }

    private static List<HtmlContainer> rows(
            List<Asked> all, Predicate<Asked> which, Function<Asked, HtmlContainer> row) {
        return all.stream().filter(which).map(row).toList();
    }

    private static void add(Div section, String title, List<HtmlContainer> rows, String classes) {
        if (rows.isEmpty()) {
            return;
        }
        var list = Bits.el("ul", classes);
        list.getElement().setAttribute("role", "list");
        rows.forEach(list::add);
        section.add(Bits.el("h4", "", title), list);
    }

    private static Component folded(Reader reader, List<Asked> done) {
        var list = Bits.el("ul", "hw-tasks");
        done.forEach(asked ->
                list.add(Bits.el("li", "done", Bits.pip("done"), Tags.span("says", reader.text(asked.says())))));
        return Bits.el(
                "details", "hw-more", Bits.el("summary", "", reader.say("family.path.tasks.done", done.size())), list);
    }

    private HtmlContainer row(Reader reader, Asked asked, boolean stands, boolean mayTick, Runnable again) {
        var words = Tags.div("", Bits.el("span", "says", reader.text(asked.says())));
        when(reader, asked, stands).ifPresent(when -> words.add(Bits.el("small", "", when)));
        return Bits.el(
                "li",
                asked.isDone() ? "done" : "",
                mayTick ? tick(reader, asked, again) : Bits.pip(asked.isDone() ? "done" : ""),
                words);
    }

    private static Optional<String> when(Reader reader, Asked asked, boolean stands) {
        return asked.isDone()
                ? Optional.of(reader.say("family.todo.thanks"))
                : asked.due()
                        .map(day -> stands || asked.task().isPresent()
                                ? Todos.by(reader, day)
                                : reader.say("family.todo.about", PathWords.date(reader, day)));
    }

    private NativeButton tick(Reader reader, Asked asked, Runnable again) {
        var id = "stage-task-" + asked.stage().replace('/', '-') + "-" + asked.place();
        var tick = new NativeButton();
        tick.addClassName("hw-tick");
        tick.setId(id);
        tick.getElement().setAttribute("type", "button");
        tick.getElement().setAttribute("role", "checkbox");
        tick.getElement().setAttribute("aria-checked", String.valueOf(asked.isDone()));
        tick.getElement().setAttribute("aria-label", reader.text(asked.says()));
        tick.add(Icon.CHECK.draw());
        tick.addClickListener(pressed -> {
            act(reader, asked);
            again.run();
            Todos.focus(id);
        });
        return tick;
    }

    private void act(Reader reader, Asked asked) {
        try {
            var done = asked.task().filter(task -> task.end().isPresent());
            done.ifPresentOrElse(
                    task -> tasks.takeBack(reader.viewer(), task.id(), task.version()),
                    () -> stages.tick(reader.viewer(), reader.id(), asked.stage(), asked.place()));
        } catch (Overtaken overtaken) {
            Told.couldNot(reader.say("family.todo.overtaken"));
        }
    }

    private static boolean canBeTakenBack(Reader reader, Asked asked) {
        return asked.task()
                .flatMap(Task::end)
                .filter(end ->
                        end.ticked() && !reader.instant().isAfter(end.at().plus(Tasks.UNDO)))
                .isPresent();
    }
}
