package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.task.StageTasks;
import org.hearthway.task.StageTasks.Asked;
import org.hearthway.task.Task;
import org.hearthway.task.Tasks;

/**
 * What stages ask of the family, by themselves and as the team gave it: each with its day and a stone to tick; what was
 * done earlier is folded.
 */
final class StageTicks {

    /** Where the tasks come from. */
    @org.springframework.stereotype.Component
    static class Source {

        private final StageTasks stages;
        private final Tasks tasks;
        private final Gate gate;

        Source(StageTasks stages, Tasks tasks, Gate gate) {
            this.stages = stages;
            this.tasks = tasks;
            this.gate = gate;
        }

        /**
         * The tasks as they are, for one drawing of a page.
         *
         * @param again draws the page anew after a press
         */
        StageTicks of(Reader reader, Runnable again) {
            return new StageTicks(this, reader, again);
        }
    }

    /** One line: what is to be done, in which language, by when, and what a press does. */
    private record Line(
            String id, String says, Language language, Optional<String> when, boolean done, Runnable press) {}

    private final Source from;
    private final Reader reader;
    private final Runnable again;
    private final boolean mayTick;
    private final List<Asked> asked;
    private final List<Task> given;

    private StageTicks(Source from, Reader reader, Runnable again) {
        this.from = from;
        this.reader = reader;
        this.again = again;
        mayTick = from.gate.allows(reader.viewer(), Action.TICK_TASK, reader.id());
        asked = from.stages.of(reader.viewer(), reader.id());
        given = from.tasks.forFamily(reader.viewer(), reader.id());
    }

    /**
     * The list; empty when the stage asks nothing.
     *
     * @param stage as tasks name it
     * @param stands whether its day stands; until then no day of its tasks does
     */
    Optional<Component> list(String stage, boolean stands) {
        var here = asked.stream().filter(one -> one.stage().equals(stage)).toList();
        var done = here.stream()
                .filter(one -> one.isDone() && !canBeTakenBack(one))
                .toList();
        var toTick = Stream.concat(
                        here.stream()
                                .filter(one -> hasDay(one) && !done.contains(one))
                                .map(one -> line(one, stands)),
                        given.stream()
                                .filter(task -> isOtherwiseOf(stage, task))
                                .map(this::line))
                .map(this::row)
                .toList();
        var always = here.stream()
                .filter(one -> !hasDay(one))
                .map(one -> Bits.el("li", "", reader.text(one.says())))
                .toList();
        var section = Tags.div("hw-need");
        add(section, reader.say("family.todo.title"), toTick, "hw-tasks");
        if (!done.isEmpty()) {
            section.add(folded(done));
        }
        add(section, reader.say("family.path.always"), always, "hw-always");
        return section.getComponentCount() == 0 ? Optional.empty() : Optional.of(section);
    }

    /** What has no day is not done once: it goes on as long as the stage. */
    private static boolean hasDay(Asked one) {
        return one.due().isPresent() || one.isDone();
    }

    /** Whether the team gave it for the stage in words of its own. */
    private boolean isOtherwiseOf(String stage, Task task) {
        return task.stage().filter(stage::equals).isPresent()
                && asked.stream()
                        .flatMap(one -> one.task().stream())
                        .noneMatch(known -> known.id().equals(task.id()));
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

    private Component folded(List<Asked> done) {
        var list = Bits.el("ul", "hw-tasks");
        done.forEach(one ->
                list.add(Bits.el("li", "done", Bits.pip("done"), Tags.span("says", reader.text(one.says())))));
        return Bits.el(
                "details", "hw-more", Bits.el("summary", "", reader.say("family.path.tasks.done", done.size())), list);
    }

    private Line line(Asked one, boolean stands) {
        var when = one.due()
                .map(day -> stands || isGiven(one)
                        ? Todos.by(reader, day)
                        : reader.say("family.todo.about", PathWords.date(reader, day)));
        return new Line(
                "stage-task-" + one.stage().replace('/', '-') + "-" + one.place(),
                reader.text(one.says()),
                reader.language(),
                one.isDone() ? Optional.of(reader.say("family.todo.thanks")) : when,
                one.isDone(),
                one.task()
                        .filter(task -> one.isDone())
                        .<Runnable>map(task -> () -> takeBack(task))
                        .orElse(() -> from.stages.tick(reader.viewer(), reader.id(), one.stage(), one.place())));
    }

    private static boolean isGiven(Asked one) {
        return one.task().filter(task -> !task.isAskedByItsStage()).isPresent();
    }

    private Line line(Task task) {
        var done = task.end().isPresent();
        return new Line(
                "stage-task-" + task.id(),
                task.says().in(reader.language()),
                task.says().shownIn(reader.language()),
                Optional.of(done ? reader.say("family.todo.thanks") : Todos.by(reader, task.wantedBy())),
                done,
                done ? () -> takeBack(task) : () -> from.tasks.tick(reader.viewer(), task.id(), task.version()));
    }

    private void takeBack(Task task) {
        from.tasks.takeBack(reader.viewer(), task.id(), task.version());
    }

    private HtmlContainer row(Line line) {
        var says = Bits.el("span", "says", line.says());
        says.getElement().setAttribute("lang", line.language().tag());
        var words = Tags.div("", says);
        line.when().ifPresent(when -> words.add(Bits.el("small", "", when)));
        return Bits.el(
                "li", line.done() ? "done" : "", mayTick ? tick(line) : Bits.pip(line.done() ? "done" : ""), words);
    }

    private NativeButton tick(Line line) {
        var tick = new NativeButton();
        tick.addClassName("hw-tick");
        tick.setId(line.id());
        tick.getElement().setAttribute("type", "button");
        tick.getElement().setAttribute("role", "checkbox");
        tick.getElement().setAttribute("aria-checked", String.valueOf(line.done()));
        tick.getElement().setAttribute("aria-label", line.says());
        tick.add(Icon.CHECK.draw());
        tick.addClickListener(pressed -> {
            press(line);
            again.run();
            Todos.focus(line.id());
        });
        return tick;
    }

    private void press(Line line) {
        try {
            line.press().run();
        } catch (Overtaken overtaken) {
            Told.couldNot(reader.say("family.todo.overtaken"));
        }
    }

    private boolean canBeTakenBack(Asked one) {
        return one.task()
                .flatMap(Task::end)
                .filter(end ->
                        end.ticked() && !reader.instant().isAfter(end.at().plus(Tasks.UNDO)))
                .isPresent();
    }
}
