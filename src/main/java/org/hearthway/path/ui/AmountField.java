package org.hearthway.path.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.hearthway.parts.Tags;
import org.hearthway.path.ClinicValues.Value;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.Amount.Gap;
import org.hearthway.path.engine.Amount.Times;
import org.hearthway.path.engine.ValuePlace.Kind;
import org.jspecify.annotations.Nullable;

/** One value of a rule: a number and, for a gap, its unit. What is wrong with it stands under both. */
final class AmountField extends Div implements HasValidation {

    private final transient Value value;
    private final IntegerField number;
    private final Select<GapUnit> unit = new Select<>();
    private final Paragraph wrong = Tags.p("hw-bad", "");
    private transient Amount shown;

    AmountField(ValueSay say, Value value, Runnable changed) {
        this.value = value;
        addClassName("hw-amount");
        var name = say.in(value.name());
        number = new IntegerField(name);
        number.setManualValidation(true);
        number.setValueChangeMode(ValueChangeMode.LAZY);
        var row = Tags.div("hw-amount-row", number);
        if (value.shipped() instanceof Gap) {
            unit.setItems(units());
            unit.setItemLabelGenerator(each -> say.say("path.values.unit." + each.name()));
            unit.setAriaLabel(say.say("path.values.unit", name));
            row.add(unit);
        }
        shown = value.own().map(own -> own.amount()).orElse(value.shipped());
        show(shown);
        number.addValueChangeListener(change -> changed.run());
        unit.addValueChangeListener(change -> changed.run());
        var shipped = Tags.div(
                "hw-amount-shipped",
                Tags.span("hw-sub", say.say("path.values.as-shipped", say.amount(value.shipped()))));
        if (value.own().isPresent()) {
            shipped.add(Tags.button("text", say.say("path.values.back"), pressed -> {
                show(value.shipped());
                changed.run();
            }));
        }
        wrong.setVisible(false);
        wrong.getElement().setAttribute("role", "alert");
        add(row, shipped, wrong);
    }

    private List<GapUnit> units() {
        var units = new ArrayList<>(Arrays.asList(GapUnit.values()));
        units.removeIf(each -> each.isBefore() && !value.place().kind().canBeBefore());
        if (value.place().kind() == Kind.APART_DAYS) {
            units.removeIf(each -> each.isOfMonths());
        }
        return units;
    }

    private void show(Amount amount) {
        shown = amount;
        if (amount instanceof Times times) {
            number.setValue(times.number());
            return;
        }
        var gap = ((Gap) amount).period();
        for (var each : List.of(
                GapUnit.YEARS,
                GapUnit.MONTHS,
                GapUnit.WEEKS,
                GapUnit.DAYS,
                GapUnit.MONTHS_BEFORE,
                GapUnit.WEEKS_BEFORE,
                GapUnit.DAYS_BEFORE)) {
            var count = each.of(gap);
            if (count.isPresent()) {
                unit.setValue(each);
                number.setValue(count.get());
                return;
            }
        }
    }

    /** Brings the keys here. */
    void focus() {
        number.focus();
    }

    Value value() {
        return value;
    }

    /** What stands there; empty while no number does. */
    Optional<Amount> amount() {
        @Nullable Integer typed = number.getValue();
        if (typed == null) {
            return Optional.empty();
        }
        if (value.shipped() instanceof Times) {
            return Optional.of(new Times(typed));
        }
        var gap = unit.getOptionalValue().map(each -> new Gap(each.gap(typed)));
        // a gap of several units, which the file may have, stands as it is until somebody types
        return gap.isPresent() ? gap.map(Amount.class::cast) : Optional.of(shown);
    }

    /** What is wished for: nothing while it is what counts now. */
    Optional<Optional<Amount>> wish() {
        return amount().flatMap(amount -> wish(value, amount));
    }

    /** The wish for a value to be so much; empty when it is already, the shipped value as such. */
    static Optional<Optional<Amount>> wish(Value value, Amount amount) {
        var counts = value.own().map(own -> own.amount()).orElse(value.shipped());
        return amount.equals(counts)
                ? Optional.empty()
                : Optional.of(Optional.of(amount).filter(other -> !other.equals(value.shipped())));
    }

    @Override
    public void setErrorMessage(String message) {
        wrong.setText(message);
    }

    @Override
    public String getErrorMessage() {
        return Objects.toString(wrong.getText(), "");
    }

    @Override
    public void setInvalid(boolean invalid) {
        number.setInvalid(invalid);
        wrong.setVisible(invalid);
    }

    @Override
    public boolean isInvalid() {
        return number.isInvalid();
    }
}
