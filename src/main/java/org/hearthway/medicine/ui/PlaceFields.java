package org.hearthway.medicine.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.medicine.ToxinSessions.Injection;
import org.hearthway.medicine.ToxinSessions.Muscle;
import org.hearthway.medicine.ToxinSessions.PlaceData;
import org.hearthway.medicine.ToxinSessions.Side;
import org.hearthway.parts.Tags;

/** One place of a session: muscle, side, units, and beside the units always their preparation. */
final class PlaceFields extends Div {

    private final Select<Muscle> muscle = new Select<>();
    private final Select<Side> side = new Select<>();
    private final BigDecimalField units;
    private final TextField preparation;

    PlaceFields(MedicineWords say, List<Muscle> muscles, int number, Optional<Injection> known) {
        addClassName("hw-part");
        muscle.setLabel(say.say("medicine.toxin.muscle", number + 1));
        muscle.setItems(muscles);
        muscle.setItemLabelGenerator(each -> each.name().in(say.language()));
        muscle.setId("place-muscle-" + number);
        side.setLabel(say.say("medicine.toxin.side"));
        side.setItems(Side.values());
        side.setItemLabelGenerator(each -> say.say("medicine.toxin.side." + each));
        side.setId("place-side-" + number);
        units = new BigDecimalField(say.say("medicine.toxin.amount"));
        units.setLocale(say.language().locale());
        units.setId("place-units-" + number);
        preparation = new TextField(say.say("medicine.toxin.preparation"));
        preparation.setMaxLength(ToxinSessions.PREPARATION_MOST);
        preparation.setId("place-preparation-" + number);
        known.ifPresent(injection -> {
            muscles.stream()
                    .filter(each -> each.id().equals(injection.muscle()))
                    .findFirst()
                    .ifPresent(muscle::setValue);
            side.setValue(injection.side());
            units.setValue(injection.units().amount());
            preparation.setValue(injection.units().preparation().name());
        });
        add(Tags.div("u-two", muscle, side), Tags.div("u-two", units, preparation));
    }

    boolean isEmpty() {
        return muscle.isEmpty() && side.isEmpty() && units.isEmpty() && preparation.isEmpty();
    }

    PlaceData typed() {
        return new PlaceData(
                muscle.getOptionalValue().map(Muscle::id),
                side.getOptionalValue(),
                Optional.ofNullable(units.getValue()),
                preparation.getValue());
    }

    /** The fields by the names that problems use, when this is the place of a number. */
    Map<String, HasValidation> fields(int number) {
        return Map.of(
                "muscle" + number, muscle,
                "side" + number, side,
                "units" + number, units,
                "preparation" + number, preparation);
    }
}
