package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.ui.EditedLine.Lie;
import org.jspecify.annotations.Nullable;

/**
 * What is seldom changed of a line, opened under it: rest and load, how the days lie, how hard it should feel and how
 * much it matters, when more is proposed, first and last day, the note.
 */
final class LineDetails extends NativeTableRow {

    private final transient Say say;
    private final transient EditedLine line;
    private final transient LineRow.Acts acts;
    private final List<NumberCell> numbers = new ArrayList<>();

    LineDetails(Say say, EditedLine line, LineRow.Acts acts, int columns) {
        this.say = say;
        this.line = line;
        this.acts = acts;
        addClassName("details");
        var cell = new NativeTableCell();
        cell.getElement().setAttribute("colspan", String.valueOf(columns));
        cell.add(Tags.div(
                "hw-details",
                group("amount", amount()),
                group("lie", lie()),
                group("hard", hard()),
                group("rule", rule()),
                dates()));
        add(cell);
    }

    private Div group(String key, Component parts) {
        var box = Tags.div("hw-group", Tags.span("hw-sub", say.one("group", key)), parts);
        box.getElement().setAttribute("role", "group").setAttribute("aria-label", say.one("group", key));
        return box;
    }

    private NumberCell number(Amount which) {
        var cell = new NumberCell(say, line, which, acts::changed);
        numbers.add(cell);
        return cell;
    }

    private Component amount() {
        var row = Tags.span("cells");
        row.add(
                number(Amount.REST).usually(String.valueOf(say.library().pace().restSeconds())),
                new Choose(
                        say.say("against", say.name(line.exercise())),
                        List.of(Against.values()),
                        line.against(),
                        against -> say.one("against", against),
                        against -> {
                            line.against(against);
                            acts.redraw(line);
                        }));
        if (line.against() == Against.BAND) {
            row.add(Tags.span("hw-sub", say.say("against.band.hint")));
        }
        row.add(Tags.button("text", say.say(line.inMinutes() ? "details.times" : "details.minutes"), pressed -> {
            line.turnDose();
            acts.redraw(line);
        }));
        return row;
    }

    private Component lie() {
        var row = Tags.span("cells");
        row.add(new Choose(
                say.say("lie", say.name(line.exercise())),
                List.of(Lie.values()),
                line.lie(),
                lie -> say.one("lie", lie),
                lie -> {
                    line.lie(lie);
                    acts.redraw(line);
                }));
        if (line.saysHowMany()) {
            row.add(number(Amount.RHYTHM), Tags.span("hw-sub", say.say("lie.hint")));
        }
        return row;
    }

    private Component hard() {
        return Tags.span(
                "cells",
                number(Amount.EFFORT),
                new Choose(
                        say.say("priority", say.name(line.exercise())),
                        List.of(Priority.values()),
                        line.priority(),
                        priority -> say.one("priority", priority),
                        priority -> {
                            line.priority(priority);
                            acts.changed();
                        }));
    }

    private Component rule() {
        var row = Tags.span("cells");
        if (!line.hasRule()) {
            row.add(Tags.button("text", say.say("rule.add"), pressed -> {
                line.addRule();
                acts.redraw(line);
            }));
            return row;
        }
        row.add(
                new Span(say.say("rule.when")),
                number(Amount.RULE_DAYS),
                new Span(say.say("rule.with")),
                number(Amount.RULE_EFFORT),
                number(Amount.RULE_PAIN),
                new Span(say.say("rule.then")),
                number(Amount.NEXT_SETS));
        if (line.inMinutes()) {
            row.add(number(Amount.NEXT_MINUTES));
        } else {
            row.add(number(Amount.NEXT_REPETITIONS), number(Amount.NEXT_HOLD));
        }
        if (line.against() == Against.WEIGHT) {
            row.add(number(Amount.NEXT_KILOGRAMS));
        } else if (line.against() == Against.BAND) {
            row.add(number(Amount.NEXT_BAND));
        }
        row.add(Tags.button("text", say.say("rule.drop"), pressed -> {
            line.dropRule();
            acts.redraw(line);
        }));
        return Tags.span("", row, Tags.span("hw-sub u-block", say.say("rule.hint")));
    }

    private Component dates() {
        var from = day("details.from", line.from(), day -> {
            line.from(day);
            acts.changed();
        });
        from.setHelperText(say.say("details.from.hint"));
        var until = day("details.until", line.until(), day -> {
            line.until(day);
            acts.changed();
        });
        return Tags.div("hw-dates", from, until, note());
    }

    private DatePicker day(String key, @Nullable LocalDate day, Consumer<@Nullable LocalDate> changed) {
        var field = new DayField(say.say(key), say.words(), say.language());
        field.setClearButtonVisible(true);
        if (day != null) {
            field.setValue(day);
        }
        field.addValueChangeListener(change -> changed.accept(change.getValue()));
        return field;
    }

    private TextField note() {
        var note = new TextField(say.say("details.note"));
        note.addClassName("grow");
        note.setValue(line.note());
        note.setHelperText(say.say("details.note.hint", ProgramRules.NOTE));
        note.setValueChangeMode(ValueChangeMode.LAZY);
        note.addValueChangeListener(change -> {
            line.note(change.getValue());
            acts.changed();
        });
        return note;
    }

    /** Marks the numbers that problems are about. */
    void tell(List<Problem> problems) {
        numbers.forEach(number -> number.tell(problems));
    }
}
