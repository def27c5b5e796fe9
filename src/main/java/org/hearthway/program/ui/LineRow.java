package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.Exercise;
import org.hearthway.program.engine.Pace;
import org.hearthway.program.engine.ProgramDiff.Field;
import org.hearthway.program.engine.ProgramDiff.LineDiff;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;

/** One exercise of the table: order, figure, name, dose, days, what was done, minutes; what is wrong stands under it. */
final class LineRow extends NativeTableRow {

    /** What a row asks of its table. */
    interface Acts {
        /** A value of the line is another: marks, sums and draft follow; the rows stay. */
        void changed();

        /** The lines are others: the table is drawn anew, and the keys come back to this line. */
        void redraw(EditedLine line);

        void move(EditedLine line, int by);

        void takeOut(EditedLine line);
    }

    private static final int PAUSE = 350;

    private final transient Say say;
    private final transient EditedLine line;
    private final transient Acts acts;
    private final transient Pace pace;
    private final Map<EditedLine.Amount, Input> inputs = new EnumMap<>(EditedLine.Amount.class);
    private final Map<EditedLine.Amount, Span> cells = new EnumMap<>(EditedLine.Amount.class);
    private final Map<EditedLine.Amount, Element> former = new EnumMap<>(EditedLine.Amount.class);
    private final Map<DayOfWeek, NativeButton> days = new EnumMap<>(DayOfWeek.class);
    private final Span tags = new Span();
    private final Span under = new Span();
    private final Span minutes = Tags.span("hw-b", "");
    private final Div wrong = Tags.div("hw-row-wrong");

    LineRow(Say say, EditedLine line, Acts acts, Pace pace, LastDays last, String id, boolean first, boolean end) {
        this.say = say;
        this.line = line;
        this.acts = acts;
        this.pace = pace;
        Keys.row(this, id);
        wrong.setId(id + "-wrong");
        add(
                order(first, end),
                Cells.cell("pic", Cells.figure(say, line.exercise(), line.side())),
                what(),
                dose(),
                days(),
                Cells.cell("last", Cells.trail(say, last, line.exercise())),
                Cells.cell("r", new Span(pain(last))),
                Cells.cell("r", minutes),
                more());
    }

    private String name() {
        return say.name(line.exercise());
    }

    private NativeTableCell order(boolean first, boolean end) {
        var up = nudge(Icon.UP, say.say("up", name()), -1, "u");
        up.setEnabled(!first);
        var down = nudge(Icon.DOWN, say.say("down", name()), 1, "d");
        down.setEnabled(!end);
        return Cells.cell("ord", up, down);
    }

    private NativeButton nudge(Icon icon, String label, int by, String key) {
        var button = new NativeButton();
        button.addClassName("hw-nudge");
        button.getElement().setAttribute("type", "button").setAttribute("aria-label", label);
        button.add(icon.draw());
        button.addClickListener(pressed -> acts.move(line, by));
        return Keys.press(button, key);
    }

    private NativeTableCell what() {
        var exercise = say.library().find(line.exercise());
        var swap = Tags.span("swap");
        swap.getElement().setAttribute("role", "group").setAttribute("aria-label", say.say("swap", name()));
        exercise.flatMap(Exercise::easier)
                .flatMap(say.library()::find)
                .ifPresent(other -> swap.add(swapButton(Icon.EASIER, "easier", other, "e")));
        exercise.flatMap(Exercise::harder)
                .flatMap(say.library()::find)
                .ifPresent(other -> swap.add(swapButton(Icon.HARDER, "harder", other, "h")));
        return Cells.cell("what", Tags.span("hw-b", name()), new Span(" "), tags, swap);
    }

    private Component swapButton(Icon icon, String way, Exercise other, String key) {
        var button = new NativeButton();
        button.addClassName("hw-word");
        button.getElement()
                .setAttribute("type", "button")
                .setAttribute("aria-label", say.say(way + ".for", name(), say.name(other.id())))
                .setAttribute("title", say.name(other.id()));
        button.add(icon.draw(), new Span(say.say(way)));
        button.addClickListener(pressed -> {
            line.swap(other);
            acts.redraw(line);
        });
        return Keys.press(button, key);
    }

    private NativeTableCell dose() {
        var row = Tags.span("cells");
        row.add(number(EditedLine.Amount.SETS, 2));
        if (line.inMinutes()) {
            row.add(number(EditedLine.Amount.MINUTES, 3));
        } else {
            row.add(number(EditedLine.Amount.REPETITIONS, 3), number(EditedLine.Amount.HOLD, 3));
        }
        if (line.side() != Side.NONE) {
            row.add(side());
        }
        if (line.isOpen() || !line.typed(EditedLine.Amount.TIMES_A_DAY).equals("1")) {
            row.add(number(EditedLine.Amount.TIMES_A_DAY, 1));
        }
        under.addClassName("note");
        return Cells.cell("dose", row, under, wrong);
    }

    private Component number(EditedLine.Amount which, int width) {
        var cell = Tags.span("hw-mini w" + width);
        var input = new Input(ValueChangeMode.LAZY);
        input.setValueChangeTimeout(PAUSE);
        input.setValue(line.typed(which));
        input.setPlaceholder("–");
        input.getElement()
                .setAttribute("inputmode", "numeric")
                .setAttribute("autocomplete", "off")
                .setAttribute("aria-label", say.one("field", which.field(), name()))
                .setAttribute("aria-describedby", wrong.getId().orElse(""));
        input.addValueChangeListener(typed -> {
            line.type(which, typed.getValue());
            acts.changed();
        });
        if (which == EditedLine.Amount.SETS) {
            Keys.press(input, "enter");
        }
        var was = Cells.struck("");
        cell.getElement().appendChild(was);
        cell.add(input);
        cell.getElement().appendChild(new Element("small").setText(say.one("unit", which.field())));
        inputs.put(which, input);
        cells.put(which, cell);
        former.put(which, was);
        return cell;
    }

    private Component side() {
        var button = new NativeButton(say.program().side(say.language(), line.side()));
        button.addClassNames("hw-mini", "side");
        button.getElement()
                .setAttribute("type", "button")
                .setAttribute("aria-label", say.say("side", sideWord(), name()));
        button.addClickListener(pressed -> {
            line.turnSide();
            acts.redraw(line);
        });
        return button;
    }

    private String sideWord() {
        return say.program().side(say.language(), line.side());
    }

    private NativeTableCell days() {
        var row = Tags.span("hw-dow");
        row.getElement().setAttribute("role", "group").setAttribute("aria-label", say.say("days", name()));
        for (var day : DayOfWeek.values()) {
            var date = LocalDate.EPOCH.with(java.time.temporal.TemporalAdjusters.nextOrSame(day));
            var button = new NativeButton(say.one("day", day.getValue()));
            button.getElement()
                    .setAttribute("type", "button")
                    .setAttribute("aria-label", say.words().weekday(say.language(), date));
            button.addClickListener(pressed -> {
                line.toggle(day);
                acts.changed();
            });
            days.put(day, Keys.press(button, String.valueOf(day.getValue())));
            row.add(button);
        }
        return Cells.cell("", row);
    }

    private String pain(LastDays last) {
        var least = last.leastPain(line.exercise());
        var most = last.mostPain(line.exercise());
        if (least.isEmpty() || most.isEmpty()) {
            return "–";
        }
        return least.getAsInt() == most.getAsInt()
                ? String.valueOf(most.getAsInt())
                : least.getAsInt() + "–" + most.getAsInt();
    }

    private NativeTableCell more() {
        var button = Tags.round(Icon.MORE, say.say("more", name()), pressed -> {
            line.open(!line.isOpen());
            acts.redraw(line);
        });
        button.getElement().setAttribute("aria-expanded", String.valueOf(line.isOpen()));
        return Cells.cell("more", Keys.press(button, "m"));
    }

    /**
     * Follows what was typed.
     *
     * @param diff this line against the version compared with
     * @param problems what is wrong with it
     * @param cautions rules of care that it meets
     * @param shown whether families may see the exercise
     */
    void follow(LocalDate effective, LineDiff diff, List<Problem> problems, List<Plan.Care> cautions, boolean shown) {
        var now = line.line(effective);
        minutes.setText(String.valueOf(problems.isEmpty() ? pace.minutes(now) : "–"));
        mark(
                EditedLine.Amount.SETS,
                Field.SETS,
                diff,
                diff.before().map(b -> b.dose().sets()));
        mark(
                EditedLine.Amount.REPETITIONS,
                Field.REPETITIONS,
                diff,
                diff.before().map(b -> b.dose().repetitions()));
        mark(
                EditedLine.Amount.HOLD,
                Field.HOLD,
                diff,
                diff.before().map(b -> b.dose().holdSeconds()));
        mark(
                EditedLine.Amount.MINUTES,
                Field.MINUTES,
                diff,
                diff.before().map(b -> b.dose().minutes()));
        mark(
                EditedLine.Amount.TIMES_A_DAY,
                Field.TIMES_A_DAY,
                diff,
                diff.before().map(b -> b.dose().timesADay()));
        days.forEach((day, button) -> {
            var on = line.isOn(day);
            button.setClassName("y", on);
            button.setClassName(
                    "new",
                    diff.before().filter(b -> b.days().contains(day) != on).isPresent() || (diff.isNew() && on));
            button.getElement().setAttribute("aria-pressed", String.valueOf(on));
        });
        tags.removeAll();
        if (diff.isNew()) {
            tags.add(Tags.span("hw-label ember", say.say("new")));
        } else if (diff.moved()) {
            tags.add(Tags.span("hw-label ember", say.say("moved")));
        }
        if (!shown) {
            tags.add(Tags.span("hw-label line", say.say("hidden")));
        }
        under(now, effective);
        tell(problems, cautions);
    }

    private void mark(EditedLine.Amount which, Field field, LineDiff diff, Optional<Integer> was) {
        var cell = cells.get(which);
        var struck = former.get(which);
        if (cell == null || struck == null) {
            return;
        }
        var differs = diff.isNew() || diff.fields().contains(field);
        cell.setClassName("new", differs);
        var before = was.filter(w -> diff.fields().contains(field) && w > 0);
        struck.setText(before.map(String::valueOf).orElse(""));
        struck.setVisible(before.isPresent());
    }

    private void under(ProgramLine now, LocalDate effective) {
        var parts = new ArrayList<String>();
        if (now.from().isAfter(effective)) {
            parts.add(say.say("from", say.date(now.from())));
        }
        now.until().ifPresent(until -> parts.add(say.say("until", say.date(until))));
        if (!now.note().isBlank()) {
            parts.add(say.say("quoted", now.note()));
        }
        under.setText(line.isOpen() ? "" : String.join(" · ", parts));
        under.setVisible(!under.getText().isEmpty());
    }

    private void tell(List<Problem> problems, List<Plan.Care> cautions) {
        wrong.removeAll();
        inputs.forEach((which, input) -> {
            var bad = problems.stream().anyMatch(p -> p.field().endsWith("." + which.field()));
            input.getElement().setAttribute("aria-invalid", String.valueOf(bad));
            Optional.ofNullable(cells.get(which)).ifPresent(cell -> cell.setClassName("bad", bad));
        });
        problems.forEach(problem -> wrong.add(Tags.p("hw-bad", say.problem(problem))));
        for (var care : cautions) {
            if (care.rule().forbids()) {
                wrong.add(locked(care));
            } else {
                wrong.add(Tags.p(
                        "hw-care", say.say("care", care.rule().says().in(say.language()), say.date(care.until()))));
            }
        }
    }

    private Component locked(Plan.Care care) {
        var until = care.until();
        var says = Tags.p("hw-bad", "");
        says.add(
                Icon.LOCK.draw("sm"),
                new Span(say.say("locked", say.movement(care), say.date(until)) + " "),
                Tags.button("text", say.say("locked.begin", say.date(until)), pressed -> {
                    line.from(until);
                    acts.redraw(line);
                }));
        return says;
    }
}
