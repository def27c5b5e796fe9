package org.hearthway.pump.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.Dosing;

/** A day of its own for each day of the week; one is shown at a time, another can be copied into it. */
final class WeekEditor extends Div {

    private final transient FormFields fields;
    private final transient HasValidation whole;
    private final Map<DayOfWeek, DayEditor> days = new EnumMap<>(DayOfWeek.class);
    private final Select<DayOfWeek> shown = new Select<>();
    private final Select<DayOfWeek> source = new Select<>();

    WeekEditor(FormFields fields, HasValidation whole) {
        this.fields = fields;
        this.whole = whole;
        var say = fields.say();
        choice(shown, say.say("pump.dosing.week.day"));
        choice(source, say.say("pump.dosing.week.from"));
        add(Tags.div(
                "hw-dose-week",
                shown,
                source,
                Tags.button("plain", say.say("pump.dosing.week.copy"), pressed -> copy())));
        for (var day : DayOfWeek.values()) {
            var editor = new DayEditor(fields, whole);
            editor.setVisible(day == DayOfWeek.MONDAY);
            days.put(day, editor);
            add(editor);
        }
        shown.setValue(DayOfWeek.MONDAY);
        shown.addValueChangeListener(
                changed -> days.forEach((day, editor) -> editor.setVisible(day == changed.getValue())));
    }

    private void choice(Select<DayOfWeek> select, String label) {
        select.setLabel(label);
        select.setItems(DayOfWeek.values());
        select.setItemLabelGenerator(this::name);
    }

    private String name(DayOfWeek day) {
        return day.getDisplayName(
                TextStyle.FULL_STANDALONE, fields.say().language().locale());
    }

    private void copy() {
        var from = source.getValue();
        var to = shown.getValue();
        if (from == null || to == null) {
            return;
        }
        editor(from)
                .read(new Reading())
                .ifPresentOrElse(
                        day -> editor(to).show(day),
                        () -> Told.couldNot(fields.say().say("pump.dosing.week.copy.not", name(from))));
    }

    private DayEditor editor(DayOfWeek day) {
        return java.util.Objects.requireNonNull(days.get(day));
    }

    void show(Map<DayOfWeek, DayPattern> week) {
        week.forEach((day, pattern) -> editor(day).show(pattern));
    }

    /** The week; what is wrong with a day is told with its name, since another one may be shown. */
    Optional<Dosing> read(Reading reading) {
        var week = new EnumMap<DayOfWeek, DayPattern>(DayOfWeek.class);
        for (var day : DayOfWeek.values()) {
            var of = new Reading();
            editor(day).read(of).ifPresent(pattern -> week.put(day, pattern));
            if (day == shown.getValue()) {
                reading.all(of);
            } else {
                reading.all(
                        of,
                        whole,
                        problem -> Problem.at(
                                "",
                                "pump.dosing.of-day",
                                name(day),
                                fields.say().say(problem)));
            }
        }
        return week.size() < DayOfWeek.values().length
                ? Optional.empty()
                : reading.with(whole, () -> Dosing.week(week));
    }
}
