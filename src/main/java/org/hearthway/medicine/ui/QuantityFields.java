package org.hearthway.medicine.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.medicine.engine.Quantity;

/** The amount of one dose and its unit: both typed, or both left empty. */
final class QuantityFields extends Div {

    private final BigDecimalField amount;
    private final Select<Quantity.Unit> unit = new Select<>();

    QuantityFields(MedicineWords say, Optional<Quantity> known) {
        addClassName("u-two");
        amount = new BigDecimalField(say.say("medicine.form.amount"));
        amount.setLocale(say.language().locale());
        amount.setWidthFull();
        amount.setId("medicine-amount");
        unit.setLabel(say.say("medicine.form.unit"));
        unit.setItems(Quantity.Unit.values());
        unit.setItemLabelGenerator(each -> each == null ? "" : say.unit(each));
        unit.setEmptySelectionAllowed(true);
        unit.setId("medicine-unit");
        known.ifPresent(quantity -> {
            amount.setValue(quantity.amount());
            unit.setValue(quantity.unit());
        });
        add(amount, unit);
    }

    Map<String, HasValidation> fields() {
        return Map.of("quantity", amount, "unit", unit);
    }

    /** What was typed; a half or an impossible quantity is a problem. */
    Optional<Quantity> typed(List<Problem> problems) {
        var typed = Optional.ofNullable(amount.getValue());
        var chosen = unit.getOptionalValue();
        if (typed.isEmpty() && chosen.isEmpty() && !amount.isInvalid()) {
            return Optional.empty();
        }
        if (chosen.isEmpty() || typed.filter(Quantity::isPossible).isEmpty()) {
            problems.add(Problem.at("quantity", "medicine.problem.quantity", Quantity.MOST));
            return Optional.empty();
        }
        return typed.flatMap(number -> chosen.map(of -> new Quantity(number, of)));
    }
}
