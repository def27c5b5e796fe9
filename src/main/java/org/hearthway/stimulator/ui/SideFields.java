package org.hearthway.stimulator.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Problem;
import org.hearthway.parts.Tags;
import org.hearthway.stimulator.Reading.Setting;
import org.hearthway.stimulator.Reading.Side;
import org.hearthway.stimulator.engine.AmplitudeUnit;

/** The figures of one side; all empty when that side does not stimulate. */
final class SideFields extends Div {

    private final Side side;
    private final BigDecimalField amplitude;
    private final Select<AmplitudeUnit> unit = new Select<>();
    private final IntegerField pulse;
    private final BigDecimalField rate;
    private final TextField contacts;
    private final boolean asksContacts;

    /**
     * Makes them.
     *
     * @param prefix of the fields' identifiers, so that two forms stand on one page
     * @param asksContacts whether the contacts are asked for
     */
    SideFields(StimulatorWords say, Side side, String prefix, boolean asksContacts) {
        this.side = side;
        this.asksContacts = asksContacts;
        addClassName("hw-part");
        amplitude = new BigDecimalField(say.say("stimulator.field.amplitude"));
        unit.setLabel(say.say("stimulator.field.amplitude-unit"));
        unit.setItems(AmplitudeUnit.values());
        unit.setItemLabelGenerator(one -> say.say("stimulator.unit." + one));
        unit.setValue(AmplitudeUnit.MILLIAMPERE);
        pulse = new IntegerField(say.say("stimulator.field.pulse"));
        rate = new BigDecimalField(say.say("stimulator.field.rate"));
        contacts = new TextField(say.say("stimulator.field.contacts"));
        contacts.setWidthFull();
        amplitude.setLocale(say.language().locale());
        rate.setLocale(say.language().locale());
        amplitude.setWidthFull();
        pulse.setWidthFull();
        rate.setWidthFull();
        unit.setWidthFull();
        fields().forEach((name, field) -> ((com.vaadin.flow.component.Component) field).setId(prefix + name));
        unit.setId(prefix + name("unit"));
        var title = say.say("stimulator.side." + side);
        getElement().setAttribute("role", "group").setAttribute("aria-label", title);
        add(Tags.p("hw-b u-mb2", title), Tags.div("u-two", amplitude, unit), Tags.div("u-two", pulse, rate));
        if (asksContacts) {
            add(contacts);
        }
    }

    private String name(String figure) {
        return side.name().toLowerCase(Locale.ROOT) + "-" + figure;
    }

    /** The fields by the names that problems use. */
    Map<String, HasValidation> fields() {
        var fields = new LinkedHashMap<String, HasValidation>();
        fields.put(name("amplitude"), amplitude);
        fields.put(name("pulse"), pulse);
        fields.put(name("rate"), rate);
        fields.put(name("contacts"), contacts);
        return fields;
    }

    /** Tells of every change. */
    void onChange(Runnable changed) {
        Stream.<HasValue<?, ?>>of(amplitude, unit, pulse, rate)
                .forEach(field -> field.addValueChangeListener(change -> changed.run()));
    }

    void set(Setting setting) {
        amplitude.setValue(setting.amplitude());
        unit.setValue(setting.unit());
        pulse.setValue(setting.pulseWidth());
        rate.setValue(setting.rate());
        contacts.setValue(setting.contacts());
    }

    /**
     * What was typed; empty when the side is empty.
     *
     * @param problems takes what is missing; the side then counts as not typed
     */
    Optional<Setting> typed(List<Problem> problems) {
        var given = Stream.<HasValue<?, ?>>of(amplitude, pulse, rate)
                .filter(field -> !field.isEmpty())
                .count();
        if (given == 0 && contacts.isEmpty()) {
            return Optional.empty();
        }
        Map.of("amplitude", amplitude.isEmpty(), "pulse", pulse.isEmpty(), "rate", rate.isEmpty())
                .forEach((figure, missing) -> {
                    if (missing) {
                        problems.add(Problem.at(name(figure), "stimulator.problem.side-part"));
                    }
                });
        if (given < 3) {
            return Optional.empty();
        }
        return Optional.of(new Setting(
                side,
                asksContacts ? contacts.getValue() : "",
                amplitude.getOptionalValue().orElse(BigDecimal.ZERO),
                unit.getValue(),
                pulse.getOptionalValue().orElse(0),
                rate.getOptionalValue().orElse(BigDecimal.ZERO)));
    }
}
