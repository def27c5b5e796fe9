package org.hearthway.pump.ui;

import com.vaadin.flow.component.textfield.BigDecimalField;
import java.util.Optional;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Unit;

/** Strength and dosing, which belong together. */
final class SettingFields {

    private final BigDecimalField strength;
    private final DosingField dosing;

    /**
     * Nothing typed yet.
     *
     * @param fixed the flow of a pump that cannot be set
     */
    SettingFields(FormFields fields, Optional<FlowRate> fixed) {
        strength = fields.amount("strength", Unit.MICROGRAMS_PER_MILLILITRE);
        strength.setHelperText(fields.say().say("pump.form.help.strength", Concentration.LEAST, Concentration.MOST));
        dosing = new DosingField(fields, fixed);
    }

    BigDecimalField strength() {
        return strength;
    }

    DosingField dosing() {
        return dosing;
    }

    void show(Setting set) {
        strength.setValue(set.strength().microgramsPerMillilitre());
        dosing.show(set.dosing());
    }

    void clear() {
        strength.clear();
        dosing.clear();
    }

    /** Both, or nothing when neither was typed; one alone lacks the other. */
    Optional<Setting> read(Reading reading) {
        var typed = reading.amount(strength, Concentration::new);
        var given = dosing.read(reading);
        if (strength.isEmpty() && !dosing.isUntouched() && !dosing.isFixed()) {
            reading.lacks(strength, "pump.problem.missing");
        }
        if (!strength.isEmpty() && dosing.isUntouched()) {
            reading.lacks(dosing.first(), "pump.problem.missing");
        }
        return typed.flatMap(drug -> given.map(way -> new Setting(drug, way)));
    }

    /** Says what is not there of it. */
    void need(Reading reading) {
        if (strength.isEmpty()) {
            reading.lacks(strength, "pump.problem.missing");
        }
        if (dosing.isUntouched()) {
            reading.lacks(dosing.first(), "pump.problem.missing");
        }
    }
}
