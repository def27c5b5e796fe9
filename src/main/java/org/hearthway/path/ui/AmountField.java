package org.hearthway.path.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
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

    private static final int WEEK = 7;

    private enum Unit {
        DAYS(0, 1),
        WEEKS(0, WEEK),
        MONTHS(1, 0),
        YEARS(12, 0),
        DAYS_BEFORE(0, -1),
        WEEKS_BEFORE(0, -WEEK),
        MONTHS_BEFORE(-1, 0);

        private final int months;
        private final int days;

        Unit(int months, int days) {
            this.months = months;
            this.days = days;
        }

        boolean isBefore() {
            return months < 0 || days < 0;
        }

        Gap gap(int number) {
            return new Gap(this == YEARS ? Period.ofYears(number) : Period.of(0, months * number, days * number));
        }

        /** How many of this unit make up the gap; empty when it does not come out even. */
        Optional<Integer> of(Period gap) {
            if (isBefore() != gap.isNegative()) {
                return Optional.empty();
            }
            return months == 0 ? ofDays(gap) : ofMonths(gap);
        }

        private Optional<Integer> ofMonths(Period gap) {
            int total = (int) gap.toTotalMonths();
            return gap.equals(gap.withDays(0)) && total != 0 && total % months == 0
                    ? Optional.of(total / months)
                    : Optional.empty();
        }

        private Optional<Integer> ofDays(Period gap) {
            int total = (int) ChronoUnit.DAYS.between(LocalDate.EPOCH, LocalDate.EPOCH.plus(gap));
            return gap.toTotalMonths() == 0 && total % days == 0 && (total != 0 || days == 1)
                    ? Optional.of(total / days)
                    : Optional.empty();
        }
    }

    private final transient Value value;
    private final IntegerField number;
    private final Select<Unit> unit = new Select<>();
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

    private List<Unit> units() {
        var units = new ArrayList<>(Arrays.asList(Unit.values()));
        units.removeIf(each -> each.isBefore() && value.place().kind() != Kind.VISIT_AFTER);
        if (value.place().kind() == Kind.APART_DAYS) {
            units.removeIf(each -> each.months != 0);
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
                Unit.YEARS,
                Unit.MONTHS,
                Unit.WEEKS,
                Unit.DAYS,
                Unit.MONTHS_BEFORE,
                Unit.WEEKS_BEFORE,
                Unit.DAYS_BEFORE)) {
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
        var gap = unit.getOptionalValue().map(each -> each.gap(typed));
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
