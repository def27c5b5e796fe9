package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.DayField;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Change;
import org.hearthway.pump.PumpOutlook;

/** The fields of another dosing, or another strength that the pump is told, with no refill. */
final class ChangeBody implements EntryForm.Body {

    private static final int REASON_MOST = 500;

    private final FormFields fields;
    private final SettingFields setting;
    private final TextArea reason;
    private final DayField printedAlarm;

    /** Fields that begin as the pump runs now. */
    ChangeBody(FormFields fields, PumpOutlook pump) {
        this.fields = fields;
        setting = new SettingFields(
                fields, pump.implant().flatMap(known -> known.model().fixedFlow()));
        reason = fields.area("reason", REASON_MOST);
        printedAlarm = fields.day("printedAlarm");
        fields.help("printedAlarm");
        pump.setting().ifPresent(setting::show);
    }

    /** Fills in what an earlier entry says. */
    void show(Change known) {
        setting.show(known.set());
        reason.setValue(known.reason());
        known.printedAlarm().ifPresent(printedAlarm::setValue);
    }

    @Override
    public List<Component> draw() {
        return List.of(
                fields.part("set", setting.dosing(), setting.strength()),
                fields.part("why", reason),
                fields.part("printed", printedAlarm));
    }

    @Override
    public Optional<PumpEntry.What> read(Reading reading, LocalDateTime at) {
        setting.need(reading);
        var printed = reading.value(printedAlarm);
        return setting.read(reading)
                .map(set -> new Change(set, reason.getValue().strip(), printed));
    }
}
