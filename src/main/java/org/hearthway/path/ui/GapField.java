package org.hearthway.path.ui;

import com.vaadin.flow.component.customfield.CustomField;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import java.time.Period;
import java.util.Optional;
import org.hearthway.parts.Tags;

/** A gap as a number of days, weeks or months. */
final class GapField extends CustomField<Period> {

    private static final int WEEK = 7;
    private static final int MONTHS_A_YEAR = 12;
    private static final int MOST = 3650;

    private enum Unit {
        DAYS,
        WEEKS,
        MONTHS
    }

    private final IntegerField number = new IntegerField();
    private final Select<Unit> unit = new Select<>();

    GapField(StageWords say, String label) {
        setLabel(label);
        number.setMin(0);
        number.setMax(MOST);
        number.setStepButtonsVisible(false);
        number.setWidth("5.5rem");
        number.setAriaLabel(label);
        unit.setItems(Unit.values());
        unit.setItemLabelGenerator(one -> say.say("path.unit." + one.name()));
        unit.setValue(Unit.WEEKS);
        unit.setWidth("8rem");
        unit.setAriaLabel(say.say("path.unit.of", label));
        Div row = Tags.div("u-row", number, unit);
        add(row);
    }

    @Override
    protected Period generateModelValue() {
        var many = number.getValue();
        if (many == null) {
            return getEmptyValue();
        }
        return switch (unit.getValue()) {
            case DAYS -> Period.ofDays(many);
            case WEEKS -> Period.ofDays(many * WEEK);
            case MONTHS -> Period.ofMonths(many);
        };
    }

    /** A gap of months and days has no single number: the field stays empty then. */
    @Override
    protected void setPresentationValue(Period gap) {
        number.clear();
        if (gap == null) {
            return;
        }
        int months = gap.getYears() * MONTHS_A_YEAR + gap.getMonths();
        int days = gap.getDays();
        if (days == 0 && months != 0) {
            show(months, Unit.MONTHS);
        } else if (months == 0) {
            var whole = days != 0 && days % WEEK == 0;
            show(whole ? days / WEEK : days, whole ? Unit.WEEKS : Unit.DAYS);
        }
    }

    private void show(int many, Unit each) {
        number.setValue(many);
        unit.setValue(each);
    }

    /** The gap typed, if any. */
    Optional<Period> typed() {
        return number.isInvalid() ? Optional.empty() : Optional.ofNullable(getValue());
    }
}
