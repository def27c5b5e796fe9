package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import java.time.LocalDateTime;
import java.util.Optional;
import org.hearthway.parts.DayField;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.RefillDetails.Watch;

/** What is written of a refill for the chart. */
final class DetailFields {

    private static final int NAME_MOST = 120;
    private static final int LOT_MOST = 60;
    private static final int LOOK_MOST = 200;
    private static final int NOTE_MOST = 500;

    private final TextField drug;
    private final TextField lot;
    private final DayField expires;
    private final TextField look;
    private final IntegerField attempts;
    private final TimePicker from;
    private final TimePicker until;
    private final TextField doneBy;
    private final TextArea note;

    DetailFields(FormFields fields) {
        drug = fields.text("drug", NAME_MOST);
        lot = fields.text("lot", LOT_MOST);
        expires = fields.day("expires");
        look = fields.text("look", LOOK_MOST);
        attempts = fields.whole("attempts");
        from = fields.time("watchedFrom");
        until = fields.time("watchedUntil");
        doneBy = fields.text("doneBy", NAME_MOST);
        note = fields.area("note", NOTE_MOST);
        fields.alias("watched", "watchedUntil");
        fields.help("look");
    }

    Component drug() {
        return drug;
    }

    Component lot() {
        return lot;
    }

    Component expires() {
        return expires;
    }

    Component look() {
        return look;
    }

    Component attempts() {
        return attempts;
    }

    Component from() {
        return from;
    }

    Component until() {
        return until;
    }

    Component doneBy() {
        return doneBy;
    }

    Component note() {
        return note;
    }

    /** The drug stays the same as a rule; lot and days are those of each vial. */
    void begin(RefillDetails last) {
        drug.setValue(last.drug());
    }

    void doneBy(String name) {
        doneBy.setValue(name);
    }

    void show(RefillDetails known) {
        drug.setValue(known.drug());
        lot.setValue(known.lot());
        known.expires().ifPresent(expires::setValue);
        look.setValue(known.look());
        if (known.attempts() > 0) {
            attempts.setValue(known.attempts());
        }
        known.watched().ifPresent(watch -> {
            from.setValue(watch.from().toLocalTime());
            until.setValue(watch.until().toLocalTime());
        });
        doneBy.setValue(known.doneBy());
        note.setValue(known.note());
    }

    RefillDetails read(Reading reading, LocalDateTime at, boolean readAgain) {
        return new RefillDetails(
                drug.getValue().strip(),
                lot.getValue().strip(),
                reading.value(expires),
                look.getValue().strip(),
                reading.value(attempts).orElse(0),
                watched(reading, at),
                readAgain,
                doneBy.getValue().strip(),
                note.getValue().strip());
    }

    /** Both times or none; they are of the day of the refill. */
    private Optional<Watch> watched(Reading reading, LocalDateTime at) {
        var begins = reading.value(from);
        var ends = reading.value(until);
        if (begins.isPresent() && ends.isEmpty()) {
            reading.lacks(until, "pump.problem.watched.both");
        } else if (begins.isEmpty() && ends.isPresent()) {
            reading.lacks(from, "pump.problem.watched.both");
        }
        var day = at.toLocalDate();
        return begins.flatMap(first -> ends.map(last -> new Watch(day.atTime(first), day.atTime(last))));
    }
}
