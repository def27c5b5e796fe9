package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.hearthway.base.Problem;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.Exercise;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Pace;
import org.hearthway.program.engine.Priority;
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

    private final transient Say say;
    private final transient EditedLine line;
    private final transient Acts acts;
    private final transient Pace pace;
    private final transient About about;
    private final Map<Amount, NumberCell> numbers = new EnumMap<>(Amount.class);
    private final Map<DayOfWeek, NativeButton> days = new EnumMap<>(DayOfWeek.class);
    private final Span tags = new Span();
    private final Span under = Tags.span("note", "");
    private final Span rhythm = Tags.span("note", "");
    private final Span minutes = Tags.span("hw-b", "");
    private final LineSays says;

    LineRow(
            Say say,
            EditedLine line,
            Acts acts,
            Pace pace,
            About about,
            LastDays last,
            String id,
            boolean first,
            boolean end) {
        this.say = say;
        this.line = line;
        this.acts = acts;
        this.pace = pace;
        this.about = about;
        this.says = new LineSays(say, line, acts, about, id + "-says");
        Keys.row(this, id);
        add(
                order(first, end),
                Cells.cell("pic", Cells.figure(say, line.exercise(), line.side())),
                what(),
                dose(),
                days(),
                Cells.cell("last", Cells.trail(say, last, line.exercise())),
                Cells.cell("r pain", Tags.span("hw-small-only", say.say("table.pain") + " "), new Span(pain(last))),
                Cells.cell("r min", Tags.span("hw-small-only", say.say("table.minutes") + " "), minutes),
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
            line.swap(other, about.years());
            acts.redraw(line);
        });
        return Keys.press(button, key);
    }

    private NativeTableCell dose() {
        var row = Tags.span("cells");
        row.add(number(Amount.SETS).key("enter"));
        if (line.inMinutes()) {
            row.add(number(Amount.MINUTES));
        } else {
            row.add(number(Amount.REPETITIONS), number(Amount.HOLD));
        }
        if (line.against() == Against.WEIGHT) {
            row.add(number(Amount.KILOGRAMS));
        } else if (line.against() == Against.BAND) {
            row.add(number(Amount.BAND));
        }
        if (line.side() != Side.NONE) {
            row.add(side());
        }
        if (line.isOpen() || !line.typed(Amount.TIMES_A_DAY).equals("1")) {
            row.add(number(Amount.TIMES_A_DAY));
        }
        return Cells.cell("dose", row, under, says);
    }

    private NumberCell number(Amount which) {
        var cell = new NumberCell(say, line, which, acts::changed).describedBy(says.place());
        numbers.put(which, cell);
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
        return Keys.press(button, "b");
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
        return Cells.cell("days", row, rhythm);
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
        var open = Tags.round(Icon.MORE, say.say("more", name()), pressed -> {
            line.open(!line.isOpen());
            acts.redraw(line);
        });
        open.getElement().setAttribute("aria-expanded", String.valueOf(line.isOpen()));
        var out = Tags.round(Icon.CLOSE, say.say("out", name()), pressed -> acts.takeOut(line));
        return Cells.cell("more", Keys.press(open, "m"), Keys.press(out, "x"));
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
        minutes.setText(problems.isEmpty() ? String.valueOf(pace.minutes(now)) : "–");
        mark(diff, Amount.SETS, Field.SETS, Dose::sets);
        mark(diff, Amount.REPETITIONS, Field.REPETITIONS, Dose::repetitions);
        mark(diff, Amount.HOLD, Field.HOLD, Dose::holdSeconds);
        mark(diff, Amount.MINUTES, Field.MINUTES, Dose::minutes);
        mark(diff, Amount.TIMES_A_DAY, Field.TIMES_A_DAY, Dose::timesADay);
        var loaded = diff.isNew() || diff.fields().contains(Field.LOAD);
        Optional.ofNullable(numbers.get(Amount.KILOGRAMS)).ifPresent(cell -> cell.mark(loaded, Optional.empty()));
        Optional.ofNullable(numbers.get(Amount.BAND)).ifPresent(cell -> cell.mark(loaded, Optional.empty()));
        numbers.values().forEach(cell -> cell.tell(problems));
        days.forEach((day, button) -> {
            var on = line.isOn(day);
            button.setClassName("y", on);
            button.setClassName("some", on && line.saysHowMany());
            button.setClassName(
                    "new",
                    diff.before().filter(b -> b.days().contains(day) != on).isPresent() || (diff.isNew() && on));
            button.getElement().setAttribute("aria-pressed", String.valueOf(on));
        });
        rhythm.setText(line.saysHowMany() ? say.days(now) : "");
        tags.removeAll();
        if (diff.isNew()) {
            tags.add(Tags.span("hw-label ember", say.say("new")));
        } else if (diff.moved()) {
            tags.add(Tags.span("hw-label ember", say.say("moved")));
        }
        if (now.priority() != Priority.SECOND) {
            tags.add(Tags.span("hw-label line", say.one("priority.short", now.priority())));
        }
        if (say.library().isGone(line.exercise())) {
            tags.add(Tags.span("hw-label line", say.say("gone")));
        }
        if (!shown) {
            tags.add(Tags.span("hw-label line", say.say("hidden")));
        }
        under(now, effective);
        says.follow(now, problems, cautions);
    }

    private void mark(LineDiff diff, Amount which, Field field, ToIntFunction<Dose> number) {
        var cell = numbers.get(which);
        if (cell != null) {
            var differs = diff.fields().contains(field);
            cell.mark(
                    diff.isNew() || differs,
                    diff.before()
                            .map(before -> number.applyAsInt(before.dose()))
                            .filter(was -> differs && was > 0)
                            .map(String::valueOf));
        }
    }

    /** What stands in the folded part, in words. */
    private void under(ProgramLine now, LocalDate effective) {
        var parts = new ArrayList<String>();
        if (now.from().isAfter(effective)) {
            parts.add(say.say("from", say.date(now.from())));
        }
        now.until().ifPresent(until -> parts.add(say.say("until", say.date(until))));
        parts.addAll(say.beyondDose(now));
        if (!now.note().isBlank()) {
            parts.add(say.say("quoted", now.note()));
        }
        under.setText(line.isOpen() ? "" : String.join(" · ", parts));
    }
}
