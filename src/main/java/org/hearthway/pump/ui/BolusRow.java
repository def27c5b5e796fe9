package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.timepicker.TimePicker;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.Bolus;
import org.hearthway.pump.engine.Mass;
import org.hearthway.pump.engine.Unit;

/** A bolus of a schedule: when, how much, and for how long. */
final class BolusRow extends Div {

    private final TimePicker at;
    private final BigDecimalField dose;
    private final IntegerField minutes;

    BolusRow(RowFields make, Consumer<BolusRow> dropped) {
        addClassName("hw-dose-row");
        at = make.time("at");
        dose = make.amount("bolus", Unit.MICROGRAMS);
        minutes = make.whole("minutes", Unit.MINUTES);
        add(
                at,
                dose,
                minutes,
                Tags.round(Icon.CLOSE, make.say("pump.dosing.bolus.drop"), pressed -> dropped.accept(this)));
    }

    void show(Bolus bolus) {
        at.setValue(bolus.at());
        dose.setValue(bolus.dose().rounded(3));
        minutes.setValue(bolus.minutes());
    }

    void focus() {
        at.focus();
    }

    Optional<Bolus> read(Reading reading) {
        var begins = reading.needed(at);
        var gives = reading.needed(dose).flatMap(typed -> reading.amount(dose, Mass::micrograms));
        var runs = reading.needed(minutes);
        return begins.flatMap(time -> gives.flatMap(drug ->
                runs.flatMap(length -> reading.with(minutes, () -> new Bolus(time, drug, length)))));
    }
}
