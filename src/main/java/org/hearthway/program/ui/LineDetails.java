package org.hearthway.program.ui;

import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.util.function.Consumer;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.program.engine.ProgramRules;
import org.jspecify.annotations.Nullable;

/** What is seldom changed of a line, opened under it: first and last day, the note, minutes for times, taking it out. */
final class LineDetails extends NativeTableRow {

    private final transient Say say;

    LineDetails(Say say, EditedLine line, LineRow.Acts acts, int columns) {
        this.say = say;
        addClassName("details");
        var from = day("details.from", line.from(), day -> {
            line.from(day);
            acts.changed();
        });
        from.setHelperText(say.say("details.from.hint"));
        var until = day("details.until", line.until(), day -> {
            line.until(day);
            acts.changed();
        });
        var cell = new NativeTableCell();
        cell.getElement().setAttribute("colspan", String.valueOf(columns));
        cell.add(Tags.div(
                "hw-details",
                from,
                until,
                note(line, acts),
                Tags.button("plain", say.say(line.inMinutes() ? "details.times" : "details.minutes"), pressed -> {
                    line.turnDose();
                    acts.redraw(line);
                }),
                Tags.button("plain", say.say("details.out"), pressed -> acts.takeOut(line))));
        add(cell);
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

    private TextField note(EditedLine line, LineRow.Acts acts) {
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
}
