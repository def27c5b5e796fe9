package org.hearthway.equipment.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.equipment.Item;
import org.hearthway.parts.Tags;

/** Records a look at the skin or at the fit, and when the next one is. */
final class LookForm extends Asked {

    LookForm(Labels labels, LocalDate today, Item item, Item.What what, Consumer<Item.Look> save, Runnable leave) {
        super(labels, labels.say("equipment.look." + what));
        // the new look stands behind all others
        var place = item.data().looks().size();
        var day = day("day" + place, "equipment.field.looked", Optional.of(today));
        var outcome = choice(
                "outcome",
                "equipment.field.outcome",
                "equipment.outcome." + what + ".",
                List.of(Item.Outcome.values()));
        outcome.setValue(Item.Outcome.FITS);
        var every =
                what == Item.What.SKIN ? item.data().skinEvery() : item.data().growthEvery();
        var next = day("next" + place, "equipment.field.next", every.map(today::plusDays));
        var note = text("note" + place, "equipment.field.note." + what, "");
        add(Tags.p("hw-b", labels.name(item)), Tags.div("u-two", day, next), outcome, note);
        end(
                leave,
                () -> save.accept(new Item.Look(
                        what,
                        needed("day" + place, day),
                        outcome.getValue(),
                        next.getOptionalValue(),
                        note.getValue())));
    }
}
