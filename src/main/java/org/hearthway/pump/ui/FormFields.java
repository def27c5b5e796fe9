package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasHelper;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.Unit;

/** Makes the fields of a form, knows them by the names that refusals use, and tells when something was typed. */
final class FormFields {

    private static final Duration QUARTER = Duration.ofMinutes(15);

    private final FormSay say;
    private final String form;
    private final Runnable typed;
    private final Map<String, HasValidation> named = new HashMap<>();
    private final List<HasValidation> all = new ArrayList<>();
    private boolean listening;

    /**
     * Fields of a form.
     *
     * @param form begins their identifiers
     * @param typed is told of every change
     */
    FormFields(FormSay say, String form, Runnable typed) {
        this.say = say;
        this.form = form;
        this.typed = typed;
    }

    FormSay say() {
        return say;
    }

    /** A number with its unit. */
    BigDecimalField amount(String name, Unit unit) {
        var field = new BigDecimalField(label(name));
        field.setLocale(say.language().locale());
        field.setSuffixComponent(Tags.span("hw-sub", unit.symbol()));
        field.setValueChangeMode(ValueChangeMode.LAZY);
        return kept(name, field);
    }

    IntegerField whole(String name) {
        var field = new IntegerField(label(name));
        field.setValueChangeMode(ValueChangeMode.LAZY);
        return kept(name, field);
    }

    DayField day(String name) {
        return kept(name, new DayField(label(name), say.words(), say.language()));
    }

    TimePicker time(String name) {
        var field = new TimePicker(label(name));
        field.setLocale(say.language().locale());
        field.setStep(QUARTER);
        // a list that opens by itself covers what comes next
        field.setAutoOpen(false);
        return kept(name, field);
    }

    TextField text(String name, int most) {
        var field = new TextField(label(name));
        field.setMaxLength(most);
        field.setValueChangeMode(ValueChangeMode.LAZY);
        return kept(name, field);
    }

    TextArea area(String name, int most) {
        var field = new TextArea(label(name));
        field.setMaxLength(most);
        field.setValueChangeMode(ValueChangeMode.LAZY);
        field.setWidthFull();
        return kept(name, field);
    }

    Checkbox box(String name) {
        return kept(name, new Checkbox(label(name)));
    }

    private String label(String name) {
        return say.say("pump.form.field." + name);
    }

    /** Takes in a field of another kind under its name. */
    <F extends Component & HasValidation & HasValue<?, ?>> F kept(String name, F field) {
        named.put(name, field);
        all.add(field);
        field.setId(form + "-" + name);
        field.addValueChangeListener(changed -> typed());
        return field;
    }

    /** Takes in a part that marks itself, under a name that refusals use. */
    void named(String name, HasValidation part) {
        named.put(name, part);
        all.add(part);
    }

    /** Lets refusals use another name for a field, too. */
    void alias(String other, String name) {
        named.put(other, java.util.Objects.requireNonNull(named.get(name)));
    }

    /** Puts a word of help under fields. */
    void help(String... names) {
        for (var name : names) {
            if (named.get(name) instanceof HasHelper field) {
                field.setHelperText(say.say("pump.form.help." + name));
            }
        }
    }

    /** Fields that belong together, under a heading. */
    Component part(String name, Component... children) {
        var part = Tags.section("hw-pump-part", say.say("pump.form.part." + name));
        part.add(new H3(say.say("pump.form.part." + name)), Tags.div("hw-pump-fields", children));
        return part;
    }

    /** Tells of a change in a part of the form that is no field. */
    void typed() {
        if (listening) {
            typed.run();
        }
    }

    /** Draws or fills in something, and tells of it once afterwards. */
    void fill(Runnable filling) {
        var before = listening;
        listening = false;
        filling.run();
        listening = before;
        typed();
    }

    /** Begins to tell of changes, once the form is drawn and filled in. */
    void listen() {
        listening = true;
    }

    /** A field without a name of its own, in a row of several. */
    <F extends HasValidation & HasValue<?, ?>> F inRow(F field) {
        all.add(field);
        field.addValueChangeListener(changed -> typed());
        return field;
    }

    /** Fields by the names that refusals use. */
    Map<String, HasValidation> named() {
        return Map.copyOf(named);
    }

    /** Takes all marks off. */
    void unmark() {
        all.forEach(field -> field.setInvalid(false));
    }
}
