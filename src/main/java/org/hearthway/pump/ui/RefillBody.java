package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.DayField;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpOutlook;
import org.hearthway.pump.PumpRules;
import org.hearthway.pump.engine.Unit;
import org.hearthway.pump.engine.Volume;

/** The fields of a refill, in the order of the work; of one elsewhere only what is known of it. */
final class RefillBody implements EntryForm.Body {

    private final boolean elsewhere;
    private final FormFields fields;
    private final BigDecimalField withdrawn;
    private final BigDecimalField left;
    private final BigDecimalField injected;
    private final BigDecimalField measured;
    private final DayField beyondUse;
    private final SettingFields setting;
    private final IntegerField margin;
    private final Checkbox readAgain;
    private final DayField printedAlarm;
    private final DetailFields details;

    /**
     * Fields that begin as the last refill left things.
     *
     * @param me what the person is called
     */
    RefillBody(FormFields fields, PumpOutlook pump, boolean elsewhere, String me) {
        this.fields = fields;
        this.elsewhere = elsewhere;
        withdrawn = fields.amount("withdrawn", Unit.MILLILITRES);
        left = fields.amount("left", Unit.MILLILITRES);
        injected = fields.amount("injected", Unit.MILLILITRES);
        measured = fields.amount("measured", Unit.MILLILITRES);
        beyondUse = fields.day("beyondUse");
        setting = new SettingFields(
                fields, pump.implant().flatMap(known -> known.model().fixedFlow()));
        margin = fields.whole("margin");
        readAgain = fields.box("readAgain");
        printedAlarm = fields.day("printedAlarm");
        details = new DetailFields(fields);
        var say = fields.say();
        fields.help("left", "beyondUse", "printedAlarm", "measured");
        margin.setStepButtonsVisible(true);
        margin.setHelperText(say.say(
                "pump.form.help.margin",
                PumpRules.LEAST_MARGIN,
                PumpRules.MOST_MARGIN,
                say.rules().refill().marginDays()));
        fields.alias("added", "injected");
        fields.alias("volume", "injected");
        var last = pump.fill().map(PumpEntry::what).map(Refill.class::cast);
        margin.setValue(last.map(Refill::marginDays).orElse(say.rules().refill().marginDays()));
        if (!elsewhere) {
            pump.setting().ifPresent(setting::show);
            last.map(Refill::details).ifPresent(details::begin);
            details.doneBy(me);
        }
    }

    /** Fills in what an earlier entry says. */
    void show(Refill known) {
        known.withdrawn().ifPresent(volume -> withdrawn.setValue(volume.rounded(4)));
        known.left().ifPresent(volume -> left.setValue(volume.rounded(4)));
        known.injected().ifPresent(volume -> injected.setValue(volume.rounded(4)));
        known.measured().ifPresent(volume -> measured.setValue(volume.rounded(4)));
        known.beyondUse().ifPresent(beyondUse::setValue);
        setting.clear();
        known.setting().ifPresent(setting::show);
        margin.setValue(known.marginDays());
        readAgain.setValue(known.details().readAgain());
        known.printedAlarm().ifPresent(printedAlarm::setValue);
        details.show(known.details());
    }

    @Override
    public List<Component> draw() {
        if (elsewhere) {
            return List.of(
                    fields.part("known", printedAlarm, injected, withdrawn, details.doneBy()),
                    fields.part("set", setting.strength(), setting.dosing(), margin),
                    fields.part("drug", details.drug(), details.lot(), details.expires(), beyondUse),
                    fields.part("after", details.note()));
        }
        return List.of(
                fields.part("drug", details.drug(), details.lot(), details.expires(), beyondUse),
                fields.part("fill", details.attempts(), withdrawn, details.look(), left, injected, measured),
                fields.part("set", setting.strength(), setting.dosing(), readAgain, printedAlarm, margin),
                fields.part("after", details.from(), details.until(), details.doneBy(), details.note()));
    }

    @Override
    public Optional<PumpEntry.What> read(Reading reading, LocalDateTime at) {
        var known = reading.amount(injected, Volume::millilitres);
        var set = setting.read(reading);
        var days = reading.needed(margin).orElse(0);
        if (!elsewhere) {
            reading.needed(injected);
            setting.need(reading);
        }
        return Optional.of(new Refill(
                elsewhere,
                details.read(reading, at, readAgain.getValue()),
                reading.amount(withdrawn, Volume::millilitres),
                reading.amount(left, Volume::millilitres),
                known,
                reading.amount(measured, Volume::millilitres),
                reading.value(beyondUse),
                set,
                reading.value(printedAlarm),
                days));
    }
}
