package org.hearthway.medicine.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.How;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.Medicines.Stop;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** Copies a medicine from its prescription, or writes a known line anew. */
final class MedicineForm extends Section {

    private final transient MedicineWords say;
    private final transient Consumer<MedicineData> save;
    private final TextField name;
    private final TextField form;
    private final Select<How> how = new Select<>();
    private final TextField dose;
    private final QuantityFields quantity;
    private final TextField purposeEn;
    private final TextField purposeEs;
    private final DayField since;
    private final TextField prescriber;
    private final Checkbox stopped;
    private final DayField stoppedOn;
    private final TextField stopReason;
    private final Div stopFields = new Div();

    /**
     * Draws the form.
     *
     * @param known the line as it stands, when there is one
     * @param save takes what was typed; refuses with {@link Invalid}
     * @param leave drops it
     */
    MedicineForm(MedicineWords say, Optional<MedicineData> known, Consumer<MedicineData> save, Runnable leave) {
        this.say = say;
        this.save = save;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields", "hw-wide");
        var title = say.say(known.isPresent() ? "medicine.form.change" : "medicine.form.new");
        getElement().setAttribute("aria-label", title);
        name = text("name", known.map(MedicineData::name), Medicines.NAME_MOST);
        form = text("form", known.map(MedicineData::form), Medicines.NAME_MOST);
        dose = text("dose", known.map(MedicineData::dose), Medicines.DOSE_MOST);
        dose.setHelperText(say.say("medicine.form.dose.help"));
        purposeEn = text("purposeEn", known.map(MedicineData::purposeEn), Medicines.PURPOSE_MOST);
        purposeEs = text("purposeEs", known.map(MedicineData::purposeEs), Medicines.PURPOSE_MOST);
        prescriber = text("prescriber", known.map(MedicineData::prescriber), Medicines.NAME_MOST);
        stopReason = text("stopReason", known.flatMap(MedicineData::stop).map(Stop::reason), Medicines.REASON_MOST);
        quantity = new QuantityFields(say, known.flatMap(MedicineData::quantity));
        how.setLabel(say.say("medicine.form.how"));
        how.setItems(How.values());
        how.setItemLabelGenerator(each -> say.say("medicine.how." + each));
        how.setId("medicine-how");
        known.map(MedicineData::how).ifPresent(how::setValue);
        since = day("since", known.map(MedicineData::since));
        stoppedOn = day("stoppedOn", known.flatMap(MedicineData::stop).map(Stop::on));
        stopped = new Checkbox(say.say("medicine.form.stopped"));
        stopped.setValue(known.flatMap(MedicineData::stop).isPresent());
        stopped.addValueChangeListener(changed -> stopFields.setVisible(changed.getValue()));
        stopFields.add(Tags.div("u-two", stoppedOn, stopReason));
        stopFields.setVisible(stopped.getValue());
        var keep = Tags.button("main", say.say("medicine.form.save"), pressed -> send());
        keep.setId("medicine-save");
        add(
                Tags.div("hw-colh", Tags.h2("", title)),
                Tags.p("hw-sub u-my2", say.say("medicine.form.copy")),
                Tags.div("u-two", name, form),
                dose,
                quantity,
                Tags.div("u-two", how, since),
                Tags.div("u-two", purposeEn, purposeEs),
                prescriber,
                stopped,
                stopFields,
                Tags.p("hw-sub u-mb2", say.say("medicine.caution")),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("medicine.form.leave"), pressed -> leave.run()),
                        keep));
    }

    private TextField text(String field, Optional<String> known, int most) {
        var text = new TextField(say.say("medicine.form." + field));
        text.setValue(known.orElse(""));
        text.setMaxLength(most);
        text.setWidthFull();
        text.setId("medicine-" + field);
        return text;
    }

    private DayField day(String field, Optional<LocalDate> known) {
        var day = new DayField(say.say("medicine.form." + field), say.words(), say.language());
        known.ifPresent(day::setValue);
        day.setId("medicine-" + field);
        return day;
    }

    private Map<String, HasValidation> fields() {
        var fields = new HashMap<String, HasValidation>(quantity.fields());
        fields.putAll(Map.of(
                "name", name,
                "form", form,
                "how", how,
                "dose", dose,
                "purposeEn", purposeEn,
                "purposeEs", purposeEs,
                "since", since,
                "prescriber", prescriber,
                "stoppedOn", stoppedOn,
                "stopReason", stopReason));
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

    private MedicineData data() {
        var problems = new ArrayList<Problem>();
        var amount = quantity.typed(problems);
        if (how.isEmpty()) {
            problems.add(Problem.at("how", "medicine.problem.how"));
        }
        if (since.isEmpty()) {
            problems.add(Problem.at("since", "medicine.problem.since.missing"));
        }
        if (stopped.getValue() && stoppedOn.isEmpty()) {
            problems.add(Problem.at("stoppedOn", "medicine.problem.stopped-on.missing"));
        }
        Invalid.ifAny(problems);
        return new MedicineData(
                name.getValue(),
                form.getValue(),
                how.getValue(),
                dose.getValue(),
                amount,
                purposeEn.getValue(),
                purposeEs.getValue(),
                since.getValue(),
                prescriber.getValue(),
                stopped.getValue()
                        ? Optional.of(new Stop(stoppedOn.getValue(), stopReason.getValue()))
                        : Optional.empty());
    }
}
