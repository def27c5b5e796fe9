package org.hearthway.pump.ui;

import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.Duration;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.Unit;

/** Makes the small fields of a row of a schedule. */
record RowFields(FormFields fields) {

    private static final Duration HALF_HOUR = Duration.ofMinutes(30);

    String say(String key) {
        return fields.say().say(key);
    }

    TimePicker time(String name) {
        var field = new TimePicker(label(name));
        field.setLocale(fields.say().language().locale());
        field.setStep(HALF_HOUR);
        field.setAutoOpen(false);
        return fields.inRow(field);
    }

    BigDecimalField amount(String name, Unit unit) {
        var field = new BigDecimalField(label(name));
        field.setLocale(fields.say().language().locale());
        field.setSuffixComponent(Tags.span("hw-sub", unit.symbol()));
        field.setValueChangeMode(ValueChangeMode.LAZY);
        return fields.inRow(field);
    }

    IntegerField whole(String name, Unit unit) {
        var field = new IntegerField(label(name));
        field.setSuffixComponent(Tags.span("hw-sub", unit.symbol()));
        field.setValueChangeMode(ValueChangeMode.LAZY);
        return fields.inRow(field);
    }

    private String label(String name) {
        return say("pump.dosing.row." + name);
    }
}
