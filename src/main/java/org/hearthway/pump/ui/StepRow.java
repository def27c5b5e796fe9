package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.timepicker.TimePicker;
import java.time.LocalTime;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.DrugRate;
import org.hearthway.pump.engine.Step;
import org.hearthway.pump.engine.Unit;

/** A step of a schedule: from when until when, and how much an hour. */
final class StepRow extends Div {

    private final TimePicker from;
    private final TimePicker to;
    private final BigDecimalField rate;

    StepRow(RowFields make, Consumer<StepRow> dropped) {
        addClassName("hw-dose-row");
        from = make.time("from");
        to = make.time("to");
        rate = make.amount("rate", Unit.MICROGRAMS_PER_HOUR);
        add(from, to, rate, Tags.round(Icon.CLOSE, make.say("pump.dosing.step.drop"), pressed -> dropped.accept(this)));
    }

    void from(LocalTime time) {
        from.setValue(time);
    }

    void to(LocalTime time) {
        to.setValue(time);
    }

    Optional<LocalTime> from() {
        return from.getOptionalValue();
    }

    Optional<LocalTime> to() {
        return to.getOptionalValue();
    }

    void show(Step step) {
        from.setValue(step.from());
        to.setValue(step.to());
        rate.setValue(step.rate().perHour().rounded(4));
    }

    void focus() {
        from.focus();
    }

    Optional<Step> read(Reading reading) {
        var begins = reading.needed(from);
        var ends = reading.needed(to);
        var gives = reading.needed(rate).flatMap(typed -> reading.amount(rate, DrugRate::microgramsPerHour));
        return begins.flatMap(at ->
                ends.flatMap(until -> gives.flatMap(drug -> reading.with(rate, () -> new Step(at, until, drug)))));
    }
}
