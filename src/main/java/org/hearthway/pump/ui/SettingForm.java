package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.BigDecimalField;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.PumpSettings.Setting;
import org.hearthway.pump.PumpSettings.SettingData;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.words.Words;

/**
 * Strength and daily dose, typed from the print-out: by one person, then by a second who does not see the first one's
 * numbers in the fields.
 */
final class SettingForm extends Section {

    /** What the form asks of its page. */
    interface Acts {
        /** Enters a new setting; refuses with {@link Invalid}. */
        void enter(SettingData data);

        /** Confirms the current one; refuses with {@link Invalid}. */
        void confirm(SettingData again);

        /** What a person is called. */
        String name(AccountId account);
    }

    private final transient PumpWords say;
    private final transient Words words;
    private final transient Acts acts;
    private final BigDecimalField strength;
    private final BigDecimalField dose;
    private final DayField on;

    /**
     * Draws the form.
     *
     * @param current the setting that was entered last
     * @param mayRecord whether this person records pumps
     * @param own whether this person entered the current one
     */
    SettingForm(PumpWords say, Words words, Optional<Setting> current, boolean mayRecord, boolean own, Acts acts) {
        this.say = say;
        this.words = words;
        this.acts = acts;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields");
        getElement().setAttribute("aria-label", say.say("pump.setting.title"));
        strength = new BigDecimalField(say.say("pump.setting.strength"));
        strength.setHelperText(say.say("pump.setting.strength.help", Concentration.LEAST, Concentration.MOST));
        strength.setId("setting-strength");
        dose = new BigDecimalField(say.say("pump.setting.dose"));
        dose.setHelperText(say.say("pump.setting.dose.help", DailyDose.LEAST, DailyDose.MOST));
        dose.setId("setting-dose");
        strength.setWidthFull();
        dose.setWidthFull();
        on = new DayField(say.say("pump.setting.on"), words, say.language());
        on.setId("setting-on");
        add(Tags.div("hw-colh", Tags.h2("", say.say("pump.setting.title"))));
        current.ifPresentOrElse(
                setting -> add(state(setting)), () -> add(Tags.p("hw-quiet", say.say("pump.setting.none"))));
        if (mayRecord) {
            var waits = current.filter(setting -> setting.check().isEmpty()).isPresent();
            add(fields(waits, own));
        }
    }

    private Component state(Setting setting) {
        var confirmed = setting.check();
        var box = Tags.div("hw-setting");
        box.add(
                Tags.p("hw-setting-sum", sum(setting)),
                Tags.span(
                        confirmed.isPresent() ? "hw-label moss" : "hw-label ember",
                        say.say(confirmed.isPresent() ? "pump.setting.confirmed" : "pump.setting.waits")),
                Tags.p(
                        "hw-sub",
                        say.say("pump.setting.entered", say.date(setting.on()), acts.name(setting.by()))
                                + confirmed
                                        .map(check -> " " + say.say("pump.setting.checked", acts.name(check.by())))
                                        .orElse("")));
        return box;
    }

    private String sum(Setting setting) {
        return say.say(
                "pump.setting.sum",
                setting.strength().microgramsPerMillilitre().toPlainString(),
                setting.dose().microgramsPerDay().toPlainString());
    }

    private Component fields(boolean waits, boolean own) {
        var box = new com.vaadin.flow.component.html.Div();
        var ask = waits ? (own ? "pump.setting.ask.own" : "pump.setting.ask.second") : "pump.setting.ask.new";
        box.add(
                Tags.p("hw-sub u-my2", say.say(ask)),
                Tags.div("u-two", strength, dose),
                on,
                Tags.p("hw-sub u-mb2", say.say("pump.form.caution")));
        var buttons = Tags.div("u-row u-end");
        var enter = Tags.button(
                waits && !own ? "plain" : "main", say.say("pump.setting.enter"), pressed -> send(acts::enter));
        enter.setId("setting-enter");
        buttons.add(enter);
        if (waits && !own) {
            var confirm = Tags.button("main", say.say("pump.setting.confirm"), pressed -> send(acts::confirm));
            confirm.setId("setting-confirm");
            buttons.add(confirm);
        }
        box.add(buttons);
        return box;
    }

    private Map<String, HasValidation> fields() {
        return Map.of("strength", strength, "dose", dose, "on", on);
    }

    private void send(java.util.function.Consumer<SettingData> act) {
        fields().values().forEach(field -> field.setInvalid(false));
        try {
            act.accept(data());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), words, say.language());
        }
    }

    private SettingData data() {
        var problems = new ArrayList<Problem>();
        var typedStrength = Optional.ofNullable(strength.getValue());
        var typedDose = Optional.ofNullable(dose.getValue());
        if (typedStrength.isEmpty()) {
            problems.add(Problem.at("strength", "pump.problem.strength", Concentration.LEAST, Concentration.MOST));
        }
        if (typedDose.isEmpty()) {
            problems.add(Problem.at("dose", "pump.problem.dose", DailyDose.LEAST, DailyDose.MOST));
        }
        Optional<LocalDate> day = on.getOptionalValue();
        if (day.isEmpty()) {
            problems.add(Problem.at("on", "pump.problem.on.missing"));
        }
        Invalid.ifAny(problems);
        return new SettingData(
                typedStrength.orElse(BigDecimal.ZERO), typedDose.orElse(BigDecimal.ZERO), day.orElse(LocalDate.EPOCH));
    }
}
