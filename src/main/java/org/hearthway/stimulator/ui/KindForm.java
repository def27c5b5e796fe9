package org.hearthway.stimulator.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import java.util.Map;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Generator.About;
import org.hearthway.stimulator.engine.Charge;

/** Of what kind a generator is, from its card or label. */
final class KindForm extends Section {

    private final transient StimulatorWords say;
    private final Select<Charge> charge = new Select<>();
    private final IntegerField life;
    private final BigDecimalField end;

    KindForm(StimulatorWords say, Generator generator, Consumer<About> saves) {
        this.say = say;
        var about = generator.about();
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields");
        var title = say.say("stimulator.kind.title", generator.serial());
        getElement().setAttribute("aria-label", title);
        charge.setLabel(say.say("stimulator.kind.charge"));
        charge.setItems(Charge.values());
        charge.setItemLabelGenerator(one -> say.say("stimulator.charge." + one));
        charge.setValue(about.charge());
        charge.setId("kind-charge");
        life = new IntegerField(say.say("stimulator.kind.life"));
        about.lifeYears().ifPresent(life::setValue);
        life.setId("kind-life");
        end = new BigDecimalField(say.say("stimulator.kind.end"));
        end.setLocale(say.language().locale());
        end.setHelperText(say.say("stimulator.kind.end.help"));
        about.endVolts().ifPresent(end::setValue);
        end.setId("kind-end");
        charge.setWidthFull();
        life.setWidthFull();
        end.setWidthFull();
        life.setVisible(about.charge() == Charge.AT_HOME);
        charge.addValueChangeListener(change -> life.setVisible(change.getValue() == Charge.AT_HOME));
        var save = Tags.button("plain", say.say("stimulator.kind.save"), pressed -> save(about, saves));
        save.setId("kind-save");
        add(Tags.div("hw-colh", Tags.h2("", title)), charge, life, end, Tags.div("u-row u-end", save));
    }

    private void save(About about, Consumer<About> saves) {
        Map<String, HasValidation> fields = Map.of("lifeYears", life, "endVolts", end);
        fields.values().forEach(field -> field.setInvalid(false));
        try {
            saves.accept(
                    new About(charge.getValue(), life.getOptionalValue(), end.getOptionalValue(), about.version()));
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, say.words(), say.language());
        }
    }
}
