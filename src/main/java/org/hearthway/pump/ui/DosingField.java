package org.hearthway.pump.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.BigDecimalField;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Unit;

/** How a pump is set to give its drug: one rate, steps, a day for each weekday, or nothing. */
final class DosingField extends Div implements HasValidation {

    /** What can be chosen. */
    private enum Way {
        CONSTANT,
        CYCLE,
        WEEK,
        STOPPED
    }

    private final transient FormFields fields;
    private final transient Optional<FlowRate> fixed;
    private final RadioButtonGroup<Way> way = new RadioButtonGroup<>();
    private final BigDecimalField dose;
    private final Div place = new Div();
    private final Paragraph error = Tags.p("hw-field-error", "");
    private final DayEditor day;
    private Optional<WeekEditor> week = Optional.empty();
    private boolean invalid;

    /**
     * Nothing chosen yet.
     *
     * @param fixed the flow of a pump that cannot be set
     */
    DosingField(FormFields fields, Optional<FlowRate> fixed) {
        this.fields = fields;
        this.fixed = fixed;
        this.day = new DayEditor(fields, this);
        addClassName("hw-dosing");
        var say = fields.say();
        dose = fields.amount("dose", Unit.MICROGRAMS_PER_DAY);
        dose.setHelperText(say.say("pump.form.help.dose", DailyDose.LEAST, DailyDose.MOST));
        way.setLabel(say.say("pump.dosing.way"));
        way.setItems(List.of(Way.values()));
        way.setItemLabelGenerator(each -> say.say("pump.dosing.way." + each));
        way.addValueChangeListener(changed -> fields.fill(this::draw));
        error.setVisible(false);
        error.getElement().setAttribute("role", "alert");
        fields.named("dosing", this);
        if (fixed.isPresent()) {
            add(
                    Tags.p(
                            "hw-b",
                            say.say(
                                    "pump.dosing.fixed",
                                    say.figures().result(fixed.get().perDay()))),
                    Tags.p("hw-sub", say.say("pump.dosing.fixed.why")),
                    error);
        } else {
            way.setValue(Way.CONSTANT);
            add(way, place, error);
        }
    }

    private void draw() {
        place.removeAll();
        switch (way.getValue()) {
            case CONSTANT -> place.add(dose);
            case CYCLE -> place.add(day);
            case WEEK -> place.add(editor());
            case STOPPED ->
                place.add(Tags.div(
                        "hw-banner u-my2",
                        Icon.NOW.draw(),
                        Tags.div(
                                "",
                                Tags.span("hw-b", fields.say().say("pump.dosing.stopped.title")),
                                new Span(fields.say().say("pump.dosing.stopped")))));
        }
    }

    private WeekEditor editor() {
        if (week.isEmpty()) {
            week = Optional.of(new WeekEditor(fields, this));
        }
        return week.get();
    }

    /** Fills it in. */
    void show(Dosing dosing) {
        if (fixed.isEmpty()) {
            fields.fill(() -> fill(dosing));
        }
    }

    private void fill(Dosing dosing) {
        if (dosing instanceof Dosing.Constant constant) {
            way.setValue(Way.CONSTANT);
            dose.setValue(constant.dose().microgramsPerDay());
        } else if (dosing instanceof Dosing.Cycle cycle) {
            way.setValue(Way.CYCLE);
            day.show(cycle.day());
        } else if (dosing instanceof Dosing.Week each) {
            way.setValue(Way.WEEK);
            editor().show(each.days());
        } else if (dosing instanceof Dosing.Stopped) {
            way.setValue(Way.STOPPED);
        }
    }

    /** Empties it. */
    void clear() {
        if (fixed.isEmpty()) {
            dose.clear();
            way.setValue(Way.CONSTANT);
        }
    }

    /** Whether the pump decides and not the person. */
    boolean isFixed() {
        return fixed.isPresent();
    }

    /** Whether nothing was typed at all. */
    boolean isUntouched() {
        return fixed.isEmpty() && way.getValue() == Way.CONSTANT && dose.isEmpty();
    }

    /** What was typed; empty when it is no dosing, or none yet. */
    Optional<Dosing> read(Reading reading) {
        if (fixed.isPresent()) {
            return fixed.map(Dosing::fixedFlow);
        }
        return switch (way.getValue()) {
            case CONSTANT -> reading.amount(dose, DailyDose::new).map(Dosing::constant);
            case CYCLE -> day.read(reading).flatMap(pattern -> reading.with(this, () -> Dosing.cycle(pattern)));
            case WEEK -> editor().read(reading);
            case STOPPED -> Optional.of(Dosing.stopped());
        };
    }

    /** Where a person goes on when nothing stands there. */
    HasValidation first() {
        return fixed.isEmpty() && way.getValue() == Way.CONSTANT ? dose : this;
    }

    @Override
    public void setErrorMessage(String says) {
        error.setText(says);
    }

    @Override
    public String getErrorMessage() {
        return error.getText();
    }

    @Override
    public void setInvalid(boolean isInvalid) {
        invalid = isInvalid;
        error.setVisible(isInvalid);
    }

    @Override
    public boolean isInvalid() {
        return invalid;
    }
}
