package org.hearthway.stimulator.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Reading.Again;
import org.hearthway.stimulator.Reading.Setting;
import org.hearthway.stimulator.Reading.Side;
import org.hearthway.stimulator.engine.BatteryUnit;

/** The second person reads the device and types the figures, without seeing those of the first in the fields. */
final class CheckForm extends Section {

    private final transient StimulatorWords say;
    private final BigDecimalField level;
    private final Select<BatteryUnit> unit = new Select<>();
    private final IntegerField chargeEvery;
    private final SideFields left;
    private final SideFields right;

    CheckForm(StimulatorWords say, Reading reading, String by, Consumer<Again> confirms) {
        this.say = say;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields", "hw-second");
        getElement().setAttribute("aria-label", say.say("stimulator.check.title"));
        level = new BigDecimalField(say.say("stimulator.field.level"));
        level.setLocale(say.language().locale());
        level.setId("again-level");
        level.setWidthFull();
        unit.setLabel(say.say("stimulator.field.unit"));
        unit.setItems(BatteryUnit.values());
        unit.setItemLabelGenerator(one -> say.say("stimulator.unit." + one));
        unit.setValue(BatteryUnit.PERCENT);
        unit.setId("again-unit");
        unit.setWidthFull();
        chargeEvery = new IntegerField(say.say("stimulator.field.charge-every"));
        chargeEvery.setId("again-charge-every");
        chargeEvery.setVisible(reading.data().chargeEveryDays().isPresent());
        left = new SideFields(say, Side.LEFT, "again-", false);
        right = new SideFields(say, Side.RIGHT, "again-", false);
        var confirm = Tags.button("main", say.say("stimulator.check.confirm"), pressed -> send(confirms));
        confirm.setId("again-confirm");
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("stimulator.check.title"))),
                Tags.p(
                        "hw-sub u-my2",
                        say.say(
                                "stimulator.check.ask",
                                say.moment(reading.data().taken()),
                                by)),
                Tags.div("u-two", level, unit),
                chargeEvery,
                left,
                right,
                Tags.p("hw-sub u-mb2", say.say("stimulator.form.caution")),
                Tags.div("u-row u-end", confirm));
    }

    private void send(Consumer<Again> confirms) {
        var fields = new HashMap<String, HasValidation>(Map.of("level", level, "chargeEveryDays", chargeEvery));
        fields.putAll(left.fields());
        fields.putAll(right.fields());
        fields.values().forEach(field -> field.setInvalid(false));
        try {
            confirms.accept(again());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, say.words(), say.language());
        }
    }

    private Again again() {
        var problems = new ArrayList<Problem>();
        var settings = new ArrayList<Setting>();
        left.typed(problems).ifPresent(settings::add);
        right.typed(problems).ifPresent(settings::add);
        Invalid.ifAny(problems);
        return new Again(level.getOptionalValue(), unit.getValue(), chargeEvery.getOptionalValue(), settings);
    }
}
