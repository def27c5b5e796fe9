package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.hearthway.base.Problem;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.ui.EditedLine.Leave;

/**
 * What stands under a line: what is wrong with it, what a swap did to the dose, what is usual when the dose is not, and
 * what rules of care say, each with the reason that it asks for.
 */
final class LineSays extends Div {

    private static final int PAUSE = 350;

    private final transient Say say;
    private final transient EditedLine line;
    private final transient LineRow.Acts acts;
    private final transient About about;
    private final Div problems = new Div();
    private final Div usual;
    private final Span usualWords = new Span();
    private final Input beyond;
    private final Div care = new Div();
    /** Fields for the reason of a leave, kept so that nobody loses the place while typing. */
    private final Map<String, Div> leaves = new HashMap<>();

    LineSays(Say say, EditedLine line, LineRow.Acts acts, About about, String id) {
        this.say = say;
        this.line = line;
        this.acts = acts;
        this.about = about;
        addClassName("hw-row-wrong");
        setId(id);
        beyond = because("usual.why", line.beyond(), text -> {
            line.beyond(text);
            acts.changed();
        });
        usual = Tags.div("", usualWords, beyond);
        add(problems, usual, care);
    }

    /** Where what it says is found by those who listen. */
    String place() {
        return getId().orElse("");
    }

    private Input because(String key, String text, Consumer<String> typed) {
        var input = new Input(ValueChangeMode.LAZY);
        input.setValueChangeTimeout(PAUSE);
        input.setValue(text);
        input.addClassName("hw-because");
        input.getElement()
                .setAttribute("aria-label", say.say(key + ".for", say.name(line.exercise())))
                .setAttribute("placeholder", say.say(key));
        input.addValueChangeListener(change -> typed.accept(change.getValue()));
        return input;
    }

    void follow(ProgramLine now, List<Problem> found, List<Plan.Care> cautions) {
        problems.removeAll();
        line.swapped()
                .ifPresent(was ->
                        problems.add(Tags.p("hw-care", say.say("swapped", say.name(was.exercise()), say.dose(was)))));
        found.forEach(problem -> problems.add(Tags.p("hw-bad", say.problem(problem))));
        usual(now, found);
        care(cautions);
    }

    /** A line that goes on as it was is told in a few words that its dose is unusual, and not asked. */
    private void usual(ProgramLine now, List<Problem> found) {
        var outside = say.outside(now, about);
        usual.setVisible(outside.isPresent());
        var asked = found.stream().anyMatch(p -> p.field().endsWith(".beyond"));
        var settled = !asked && !line.isOpen() && line.isBeyondAsBefore();
        beyond.setVisible(!settled
                && (asked || !now.beyond().isBlank() || !beyond.getValue().isBlank()));
        usual.setClassName("hw-care", beyond.isVisible());
        usual.setClassName("note", !beyond.isVisible());
        usualWords.setText(
                beyond.isVisible() || line.isOpen()
                        ? outside.map(says -> says + " ").orElse("")
                        : say.say(now.beyond().isBlank() ? "usual.not" : "usual.because", now.beyond()));
    }

    private void care(List<Plan.Care> cautions) {
        var forbidding = cautions.stream()
                .filter(one -> one.rule().forbids())
                .collect(Collectors.groupingBy(one -> one.rule().tag()));
        var warning = cautions.stream().filter(one -> !one.rule().forbids()).toList();
        // what is typed in stays in its place
        leaves.keySet().removeIf(tag -> !forbidding.containsKey(tag) || !hasLeave(tag));
        care.getChildren()
                .filter(child -> !leaves.containsValue(child))
                .toList()
                .forEach(care::remove);
        forbidding.forEach((tag, rules) -> {
            if (!hasLeave(tag)) {
                care.add(locked(tag, rules));
            } else if (!leaves.containsKey(tag)) {
                var given = given(tag, rules);
                leaves.put(tag, given);
                care.add(given);
            }
        });
        warning.forEach(one -> care.add(
                Tags.p("hw-care", say.say("care", one.rule().says().in(say.language()), say.date(one.until())))));
    }

    private boolean hasLeave(String tag) {
        return line.leave(tag).isPresent();
    }

    private static LocalDate end(List<Plan.Care> rules) {
        return rules.stream()
                .map(Plan.Care::until)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static LocalDate begin(List<Plan.Care> rules) {
        return rules.stream()
                .map(Plan.Care::from)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private Component locked(String tag, List<Plan.Care> rules) {
        var until = end(rules);
        var box = Tags.p("hw-bad", "");
        box.add(
                Icon.LOCK.draw("sm"),
                new Span(say.say(
                                "locked.says",
                                say.movement(rules.get(0)),
                                say.date(until),
                                rules.get(0).rule().says().in(say.language()))
                        + " "),
                Tags.button("text", say.say("locked.begin", say.date(until)), pressed -> {
                    line.from(until);
                    acts.redraw(line);
                }));
        if (about.mayLift()) {
            box.add(Tags.button("text", say.say("leave.give"), pressed -> {
                line.leave(new Leave(tag, begin(rules), until, ""));
                acts.changed();
                Optional.ofNullable(leaves.get(tag))
                        .flatMap(given -> given.getChildren()
                                .filter(Input.class::isInstance)
                                .map(Input.class::cast)
                                .findFirst())
                        .ifPresent(Input::focus);
            }));
        }
        return box;
    }

    private Div given(String tag, List<Plan.Care> rules) {
        var leave = line.leave(tag).orElseThrow();
        var box = Tags.div(
                "hw-bad",
                Icon.LOCK.draw("sm"),
                new Span(say.say("leave.given", say.movement(rules.get(0)), say.date(leave.until())) + " "));
        if (about.mayLift()) {
            box.add(
                    because("leave.why", leave.reason(), text -> {
                        line.leave(new Leave(tag, leave.begins(), leave.until(), text));
                        acts.changed();
                    }),
                    Tags.button("text", say.say("leave.back"), pressed -> {
                        line.takeLeave(tag);
                        acts.redraw(line);
                    }));
        } else {
            box.add(new Span(say.say("quoted", leave.reason())));
        }
        return box;
    }
}
