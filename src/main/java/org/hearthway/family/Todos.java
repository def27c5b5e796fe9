package org.hearthway.family;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Section;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Overtaken;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.task.Task;
import org.hearthway.task.Tasks;
import org.springframework.stereotype.Component;

/** What the family is asked to do: each with its day, and one press that says it is done. */
@Component
class Todos {

    private static final String FOCUS = "document.getElementById($0)?.focus()";

    private final Tasks tasks;
    private final Gate gate;

    Todos(Tasks tasks, Gate gate) {
        this.tasks = tasks;
        this.gate = gate;
    }

    /**
     * The list; empty when nothing is asked.
     *
     * @param most how many open ones are shown; the rest is named and stands under Dates
     * @param again draws the page anew after a press
     */
    Optional<Section> list(Reader reader, int most, Runnable again) {
        var mayTick = gate.allows(reader.viewer(), Action.TICK_TASK, reader.id());
        // what was just ticked stays for whoever may take it back
        var all = tasks.forFamily(reader.viewer(), reader.id()).stream()
                .filter(task -> mayTick || task.end().isEmpty())
                .toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        var title = reader.say("family.todo.title");
        var list = Bits.el("ul", "hw-todos");
        var open = all.stream().filter(task -> task.end().isEmpty()).toList();
        var shown = all.stream()
                .filter(task -> task.end().isPresent() || open.indexOf(task) < most)
                .toList();
        shown.forEach(task -> list.add(row(reader, task, mayTick, again)));
        var section = Tags.section("hw-todo", title, Tags.h2("hw-h2", title), list);
        if (open.size() > most) {
            section.add(Tags.link(
                    "hw-button text", reader.address("dates"), reader.say("family.todo.more", open.size() - most)));
        }
        return Optional.of(section);
    }

    private com.vaadin.flow.component.Component row(Reader reader, Task task, boolean mayTick, Runnable again) {
        var done = task.end().isPresent();
        var says = Bits.el("p", "says", task.says().in(reader.language()));
        says.getElement()
                .setAttribute("lang", task.says().shownIn(reader.language()).tag());
        var row = Bits.el("li", done ? "done" : "", Tags.div("", says, Tags.p("meta", when(reader, task, done))));
        if (mayTick) {
            row.add(done ? undo(reader, task, again) : tick(reader, task, again));
        }
        return row;
    }

    private static String when(Reader reader, Task task, boolean done) {
        return done ? reader.say("family.todo.thanks") : by(reader, task.wantedBy());
    }

    /** By when; a day that has passed is told without blame. */
    static String by(Reader reader, LocalDate day) {
        if (day.equals(reader.today())) {
            return reader.say("family.todo.today");
        }
        return reader.say(
                day.isBefore(reader.today()) ? "family.todo.was" : "family.todo.by", PathWords.day(reader, day));
    }

    private NativeButton tick(Reader reader, Task task, Runnable again) {
        var button = Tags.button(
                "plain",
                Icon.CHECK,
                reader.say("family.todo.done"),
                pressed -> act(reader, task, again, () -> tasks.tick(reader.viewer(), task.id(), task.version())));
        return named(
                button, task, reader.say("family.todo.done.which", task.says().in(reader.language())));
    }

    private NativeButton undo(Reader reader, Task task, Runnable again) {
        var button = Tags.button(
                "text",
                Icon.UNDO,
                reader.say("family.todo.undo"),
                pressed -> act(reader, task, again, () -> tasks.takeBack(reader.viewer(), task.id(), task.version())));
        return named(
                button, task, reader.say("family.todo.undo.which", task.says().in(reader.language())));
    }

    private static NativeButton named(NativeButton button, Task task, String name) {
        button.setId("todo-" + task.id());
        button.getElement().setAttribute("aria-label", name);
        return button;
    }

    private static void act(Reader reader, Task task, Runnable again, Runnable press) {
        try {
            press.run();
        } catch (Overtaken overtaken) {
            Told.couldNot(reader.say("family.todo.overtaken"));
        }
        again.run();
        focus("todo-" + task.id());
    }

    /** Puts the focus back where it was after the page was drawn anew. */
    static void focus(String id) {
        UI.getCurrent().getPage().executeJs(FOCUS, id);
    }
}
