package org.hearthway.path.ui;

import com.vaadin.flow.component.customfield.CustomField;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Tags;
import org.jspecify.annotations.Nullable;

/** A gap as a number of days, weeks, months or years. One of several units stands as it is until somebody types. */
final class GapField extends CustomField<Period> {

    /** The largest number. */
    static final int MOST = 3650;

    private final transient StageWords say;
    private final IntegerField number = new IntegerField();
    private final Select<GapUnit> unit = new Select<>();
    private transient @Nullable Period ofSeveralUnits;

    GapField(StageWords say, String label) {
        this.say = say;
        setLabel(label);
        number.setMin(0);
        number.setMax(MOST);
        number.setStepButtonsVisible(false);
        number.setWidth("5.5rem");
        number.setAriaLabel(label);
        number.addValueChangeListener(typed -> {
            if (typed.isFromClient()) {
                ofSeveralUnits = null;
                setHelperText("");
            }
        });
        unit.setItems(GapUnit.DAYS, GapUnit.WEEKS, GapUnit.MONTHS, GapUnit.YEARS);
        unit.setItemLabelGenerator(one -> say.say("path.values.unit." + one.name()));
        unit.setValue(GapUnit.WEEKS);
        unit.setWidth("8rem");
        unit.setAriaLabel(say.say("path.values.unit", label));
        add(Tags.div("u-row", number, unit));
    }

    @Override
    protected @Nullable Period generateModelValue() {
        var many = number.getValue();
        return many == null ? ofSeveralUnits : unit.getValue().gap(many);
    }

    @Override
    protected void setPresentationValue(@Nullable Period gap) {
        number.clear();
        ofSeveralUnits = null;
        setHelperText("");
        if (gap == null) {
            return;
        }
        for (var each : List.of(GapUnit.YEARS, GapUnit.MONTHS, GapUnit.WEEKS, GapUnit.DAYS)) {
            var many = each.of(gap);
            if (many.isPresent()) {
                unit.setValue(each);
                number.setValue(many.get());
                return;
            }
        }
        ofSeveralUnits = gap;
        setHelperText(say.gap(gap));
    }

    /** Whether what was typed is no number that can be. */
    boolean isWrong() {
        return number.isInvalid();
    }

    /** The gap that stands there, if any. */
    Optional<Period> typed() {
        return Optional.ofNullable(getValue());
    }
}
