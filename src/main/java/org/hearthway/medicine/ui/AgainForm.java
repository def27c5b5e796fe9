package org.hearthway.medicine.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.Again;
import org.hearthway.medicine.Medicines.Medicine;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** The second check of a medicine: another person types from the prescription what is the dose, or when it stopped. */
final class AgainForm extends Section {

    private final transient MedicineWords say;
    private final transient Consumer<Again> confirm;
    private final TextField dose;
    private final QuantityFields quantity;
    private final DayField stoppedOn;
    private final boolean stopped;

    AgainForm(MedicineWords say, Medicine medicine, Consumer<Again> confirm, Runnable leave) {
        this.say = say;
        this.confirm = confirm;
        this.stopped = medicine.data().stop().isPresent();
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields", "hw-wide");
        getElement().setAttribute("aria-label", say.say("medicine.confirm"));
        dose = new TextField(say.say("medicine.form.dose"));
        dose.setMaxLength(Medicines.DOSE_MOST);
        dose.setWidthFull();
        dose.setId("again-dose");
        quantity = new QuantityFields(say, Optional.empty());
        stoppedOn = new DayField(say.say("medicine.form.stoppedOn"), say.words(), say.language());
        stoppedOn.setId("again-stopped");
        dose.setVisible(!stopped);
        quantity.setVisible(!stopped && medicine.data().quantity().isPresent());
        stoppedOn.setVisible(stopped);
        var keep = Tags.button("main", say.say("medicine.confirm.same"), pressed -> send());
        keep.setId("again-save");
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("medicine.confirm"))),
                Tags.p(
                        "hw-sub u-my2",
                        say.say("medicine.confirm.read", medicine.data().name())),
                dose,
                quantity,
                stoppedOn,
                Tags.p("hw-sub u-mb2", say.say("medicine.caution")),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("medicine.form.leave"), pressed -> leave.run()),
                        keep));
    }

    private Map<String, HasValidation> fields() {
        var fields = new HashMap<String, HasValidation>(quantity.fields());
        fields.putAll(Map.of("dose", dose, "stoppedOn", stoppedOn));
        return fields;
    }

    private void send() {
        fields().values().forEach(field -> field.setInvalid(false));
        var problems = new ArrayList<Problem>();
        try {
            var amount = quantity.typed(problems);
            if (!stopped && dose.isEmpty()) {
                problems.add(Problem.at("dose", "medicine.problem.dose", Medicines.DOSE_MOST));
            }
            if (stopped && stoppedOn.isEmpty()) {
                problems.add(Problem.at("stoppedOn", "medicine.problem.stopped-on.missing"));
            }
            Invalid.ifAny(problems);
            confirm.accept(new Again(dose.getValue(), amount, stoppedOn.getOptionalValue()));
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), say.words(), say.language());
        }
    }
}
