package org.hearthway.medicine.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.medicine.Tapers;
import org.hearthway.medicine.Tapers.After;
import org.hearthway.medicine.Tapers.TaperData;
import org.hearthway.medicine.engine.TaperCalendar.Step;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/**
 * A taper calendar row by row: typed by the physician who signs it, then by a second person from the same order. It is
 * empty both times; nothing is filled in or reckoned.
 */
final class TaperForm extends Section {

    private static final int ROWS_AT_FIRST = 3;

    private record Row(DayField from, TextField dose, Div place) {}

    private final transient MedicineWords say;
    private final transient Consumer<TaperData> save;
    private final List<Row> rows = new ArrayList<>();
    private final Div places = Tags.div("hw-stack u-gap2");
    private final RadioButtonGroup<After> after = new RadioButtonGroup<>();
    private final DayField stopsOn;

    /**
     * Draws the form.
     *
     * @param title what is done here
     * @param ask what to type
     * @param done the words of its button
     */
    TaperForm(MedicineWords say, String title, String ask, String done, Consumer<TaperData> save, Runnable leave) {
        this.say = say;
        this.save = save;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields", "hw-wide");
        getElement().setAttribute("aria-label", title);
        after.setLabel(say.say("medicine.taper.after"));
        after.setItems(After.values());
        after.setItemLabelGenerator(each -> say.say("medicine.taper.after." + each));
        after.setId("taper-after");
        stopsOn = new DayField(say.say("medicine.taper.stops-on"), say.words(), say.language());
        stopsOn.setId("taper-stops");
        stopsOn.setVisible(false);
        after.addValueChangeListener(changed -> {
            stopsOn.setVisible(changed.getValue() == After.STOP);
            if (changed.getValue() == After.STAY) {
                stopsOn.clear();
            }
        });
        for (var row = 0; row < ROWS_AT_FIRST; row++) {
            addRow();
        }
        var keep = Tags.button("main", done, pressed -> send());
        keep.setId("taper-save");
        add(
                Tags.div("hw-colh", Tags.h2("", title)),
                Tags.p("hw-sub u-my2", ask),
                places,
                Tags.div("u-row", Tags.button("text", say.say("medicine.taper.more"), pressed -> addRow())),
                after,
                stopsOn,
                Tags.p("hw-sub u-my2", say.say("medicine.sudden")),
                Tags.p("hw-sub u-mb2", say.say("medicine.caution")),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("medicine.form.leave"), pressed -> leave.run()),
                        keep));
    }

    private void addRow() {
        if (rows.size() == Tapers.STEPS_MOST) {
            Told.couldNot(say.say("medicine.problem.steps", Tapers.STEPS_MOST));
            return;
        }
        var from = new DayField(say.say("medicine.taper.row.from", rows.size() + 1), say.words(), say.language());
        from.setId("taper-from-" + rows.size());
        var dose = new TextField(say.say("medicine.taper.row.dose", rows.size() + 1));
        dose.setMaxLength(Tapers.DOSE_MOST);
        dose.setId("taper-dose-" + rows.size());
        var row = new Row(from, dose, Tags.div("u-two", from, dose));
        rows.add(row);
        places.add(row.place());
    }

    /** Rows that somebody typed into; rows left empty at the end are none. */
    private List<Row> typed() {
        var last = rows.size();
        while (last > 0
                && rows.get(last - 1).from().isEmpty()
                && rows.get(last - 1).dose().isEmpty()) {
            last--;
        }
        return rows.subList(0, last);
    }

    private Map<String, HasValidation> fields() {
        var fields = new HashMap<String, HasValidation>();
        for (var place = 0; place < rows.size(); place++) {
            fields.put("from" + place, rows.get(place).from());
            fields.put("dose" + place, rows.get(place).dose());
        }
        fields.put("after", after);
        fields.put("stopsOn", stopsOn);
        return fields;
    }

    private void send() {
        fields().values().forEach(field -> field.setInvalid(false));
        try {
            save.accept(data());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), say.words(), say.language());
        }
    }

    private TaperData data() {
        var problems = new ArrayList<Problem>();
        var steps = new ArrayList<Step>();
        for (var row : typed()) {
            if (row.from().isEmpty()) {
                problems.add(Problem.at("from" + steps.size(), "medicine.problem.step-day"));
            }
            steps.add(new Step(
                    row.from().getOptionalValue().orElse(LocalDate.EPOCH),
                    row.dose().getValue()));
        }
        Invalid.ifAny(problems);
        return new TaperData(steps, after.getOptionalValue(), stopsOn.getOptionalValue());
    }
}
