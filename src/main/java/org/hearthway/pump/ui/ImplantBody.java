package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpKinds.PumpKind;
import org.hearthway.pump.engine.Catheter;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Length;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Unit;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.engine.VolumePerLength;

/** The figures of pump and catheter: begun from a general kind, overwritten from label and cards. */
final class ImplantBody implements EntryForm.Body {

    private static final int PLACES = 6;
    private static final int MONTHS_A_YEAR = 12;

    private final FormFields fields;
    private final Select<PumpKind> kind = new Select<>();
    private final BigDecimalField reservoir;
    private final BigDecimalField alarm;
    private final BigDecimalField tubing;
    private final BigDecimalField least;
    private final BigDecimalField most;
    private final BigDecimalField flow;
    private final IntegerField life;
    private final BigDecimalField length;
    private final BigDecimalField perLength;

    ImplantBody(FormFields fields, List<PumpKind> kinds) {
        this.fields = fields;
        var say = fields.say();
        kind.setLabel(say.say("pump.form.field.kind"));
        kind.setItems(kinds);
        kind.setItemLabelGenerator(each -> each == null ? "" : each.name().in(say.language()));
        kind.setHelperText(say.say("pump.form.help.kind"));
        fields.inRow(kind);
        reservoir = fields.amount("reservoir", Unit.MILLILITRES);
        alarm = fields.amount("alarm", Unit.MILLILITRES);
        tubing = fields.amount("tubing", Unit.MILLILITRES);
        least = fields.amount("least", Unit.MILLILITRES_PER_DAY);
        most = fields.amount("most", Unit.MILLILITRES_PER_DAY);
        flow = fields.amount("flow", Unit.MILLILITRES_PER_DAY);
        life = fields.whole("life");
        length = fields.amount("length", Unit.CENTIMETRES);
        perLength = fields.amount("perLength", Unit.MILLILITRES_PER_CENTIMETRE);
        fields.help("reservoir", "alarm", "tubing", "least", "flow", "life", "length", "perLength");
        fields.alias("deliverable", "least");
        flow.setVisible(false);
        kind.addValueChangeListener(changed -> {
            if (changed.isFromClient()) {
                fields.fill(() -> begin(changed.getValue()));
            }
        });
    }

    private void begin(PumpKind chosen) {
        show(chosen.model());
        perLength.setValue(chosen.bore().rounded(PLACES));
    }

    private void show(PumpModel model) {
        reservoir.setValue(model.reservoir().rounded(PLACES));
        alarm.setValue(model.alarm().rounded(PLACES));
        tubing.setValue(model.tubing().rounded(PLACES));
        least.setValue(model.deliverable().least().perDay().rounded(PLACES));
        most.setValue(model.deliverable().most().perDay().rounded(PLACES));
        model.fixedFlow().ifPresent(set -> flow.setValue(set.perDay().rounded(PLACES)));
        fixed(model.fixedFlow().isPresent());
        life.setValue(Math.toIntExact(model.life().toTotalMonths() / MONTHS_A_YEAR));
    }

    private void fixed(boolean isFixed) {
        flow.setVisible(isFixed);
        least.setVisible(!isFixed);
        most.setVisible(!isFixed);
    }

    /** Fills in what an earlier entry says. */
    void show(Implant known) {
        kind.getListDataView()
                .getItems()
                .filter(each -> each.id().equals(known.kind()))
                .findFirst()
                .ifPresent(kind::setValue);
        show(known.model());
        known.catheter().implanted().ifPresent(cm -> length.setValue(cm.rounded(PLACES)));
        known.catheter().bore().ifPresent(bore -> perLength.setValue(bore.rounded(PLACES)));
    }

    @Override
    public List<Component> draw() {
        return List.of(
                fields.part("pump", kind, reservoir, alarm, tubing, least, most, flow, life),
                fields.part("catheter", length, perLength));
    }

    @Override
    public Optional<PumpEntry.What> read(Reading reading, LocalDateTime at) {
        var chosen = reading.needed(kind);
        var holds = volume(reading, reservoir);
        var sounds = volume(reading, alarm);
        var inside = volume(reading, tubing);
        var range = range(reading);
        var years = reading.needed(life);
        var catheter = new Catheter(
                reading.amount(length, Length::centimetres),
                reading.amount(perLength, VolumePerLength::millilitresPerCentimetre));
        var model = holds.flatMap(full ->
                sounds.flatMap(low -> inside.flatMap(tube -> range.flatMap(flows -> years.flatMap(lasts ->
                        reading.with(fields.named(), reservoir, () -> model(full, low, tube, flows, lasts)))))));
        return chosen.flatMap(from -> model.map(figures -> new Implant(from.id(), figures, catheter)));
    }

    private PumpModel model(Volume full, Volume low, Volume tube, FlowRange flows, int years) {
        return flow.isVisible()
                ? PumpModel.fixedRate(full, low, tube, flows.least(), Period.ofYears(years))
                : PumpModel.programmable(full, low, tube, flows, Period.ofYears(years));
    }

    private Optional<FlowRange> range(Reading reading) {
        if (flow.isVisible()) {
            return flow(reading, flow).map(one -> new FlowRange(one, one));
        }
        var low = flow(reading, least);
        var high = flow(reading, most);
        return low.flatMap(from -> high.flatMap(to -> reading.with(least, () -> new FlowRange(from, to))));
    }

    private static Optional<FlowRate> flow(Reading reading, BigDecimalField field) {
        reading.needed(field);
        return reading.amount(field, typed -> FlowRate.millilitresPerDay(typed.toPlainString()));
    }

    private static Optional<Volume> volume(Reading reading, BigDecimalField field) {
        reading.needed(field);
        return reading.amount(field, (BigDecimal typed) -> Volume.millilitres(typed));
    }
}
