package org.hearthway.pump.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.KeyModifier;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.BigDecimalField;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.hearthway.base.Invalid;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.PumpBook.Again;
import org.hearthway.pump.PumpBook.Line;
import org.hearthway.pump.PumpEntry.KeyFigure;
import org.hearthway.pump.PumpEntry.Kind;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Length;
import org.hearthway.pump.engine.Shown;
import org.hearthway.pump.engine.Unit;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.engine.VolumePerLength;

/**
 * The second check: what the first person typed is typed again from print-out, vial and cards. The fields are those of
 * the kind of entry, whatever the first person filled in, so they tell nothing of it.
 */
final class CheckForm extends Section {

    /** A number that is typed again. */
    private record Figure(BigDecimalField field, Function<BigDecimal, Shown> as) {}

    private final transient FormSay say;
    private final transient FormFields fields;
    private final transient Consumer<Again> check;
    private final Map<KeyFigure, Figure> figures = new LinkedHashMap<>();
    private final transient Optional<SettingFields> setting;
    private final transient Optional<DayField> printedAlarm;

    /**
     * Draws the form, with nothing filled in.
     *
     * @param by what the first person is called
     * @param fixed the flow of a pump that cannot be set
     * @param check takes what was typed; refuses with {@link Invalid}
     */
    CheckForm(FormSay say, Line line, String by, Optional<FlowRate> fixed, Consumer<Again> check, Runnable leave) {
        this.say = say;
        this.check = check;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-pump-form");
        var title = say.say("pump.again.title");
        getElement().setAttribute("aria-label", title);
        fields = new FormFields(say, "again", this::look);
        var isImplant = line.kind() == Kind.IMPLANT;
        setting = isImplant ? Optional.empty() : Optional.of(new SettingFields(fields, fixed));
        printedAlarm = isImplant ? Optional.empty() : Optional.of(fields.day("printedAlarm"));
        add(
                Tags.div("hw-colh", Tags.h2("", title)),
                Tags.p(
                        "u-my2",
                        say.say(
                                "pump.again.who",
                                say.say("pump.kind." + line.kind()),
                                say.figures().moment(line.at()),
                                by,
                                say.figures().moment(line.entered()))),
                Tags.p("hw-sub u-mb2", say.say(isImplant ? "pump.again.read.cards" : "pump.again.read")));
        if (line.emergency()) {
            add(Tags.p("hw-sub u-mb2", say.say("pump.again.emergency")));
        }
        draw(line.kind());
        var send = Tags.button("main", Icon.SECOND, say.say("pump.again.send"), pressed -> send());
        send.setId("again-send");
        add(
                Tags.p("hw-sub u-my2", say.say("pump.form.caution")),
                Tags.div(
                        "u-row u-end", Tags.button("plain", say.say("pump.form.leave"), pressed -> leave.run()), send));
        Shortcuts.addShortcutListener(this, this::send, Key.ENTER, KeyModifier.CONTROL)
                .listenOn(this)
                .resetFocusOnActiveElement();
        fields.listen();
    }

    private void draw(Kind kind) {
        setting.ifPresent(set -> {
            add(fields.part("set", set.strength(), set.dosing()));
            fields.alias(KeyFigure.STRENGTH.name(), "strength");
            fields.alias(KeyFigure.DOSE.name(), "dosing");
        });
        if (kind == Kind.IMPLANT) {
            add(
                    fields.part(
                            "pump",
                            volume(KeyFigure.RESERVOIR, "reservoir"),
                            volume(KeyFigure.ALARM_VOLUME, "alarm"),
                            volume(KeyFigure.TUBING, "tubing")),
                    fields.part(
                            "catheter",
                            figure(KeyFigure.CATHETER_LENGTH, "length", Unit.CENTIMETRES, Length::centimetres),
                            figure(
                                    KeyFigure.PER_LENGTH,
                                    "perLength",
                                    Unit.MILLILITRES_PER_CENTIMETRE,
                                    VolumePerLength::millilitresPerCentimetre)));
        } else if (kind != Kind.CHANGE) {
            add(fields.part("fill", volume(KeyFigure.WITHDRAWN, "withdrawn"), volume(KeyFigure.INJECTED, "injected")));
        }
        printedAlarm.ifPresent(day -> {
            add(fields.part("printed", day));
            fields.alias(KeyFigure.PRINTED_ALARM.name(), "printedAlarm");
        });
    }

    private BigDecimalField volume(KeyFigure figure, String name) {
        return figure(figure, name, Unit.MILLILITRES, Volume::millilitres);
    }

    private BigDecimalField figure(KeyFigure figure, String name, Unit unit, Function<BigDecimal, Shown> as) {
        var field = fields.amount(name, unit);
        fields.alias(figure.name(), name);
        figures.put(figure, new Figure(field, as));
        return field;
    }

    private Again read(Reading reading) {
        var typed = new EnumMap<KeyFigure, Shown>(KeyFigure.class);
        figures.forEach(
                (key, figure) -> reading.amount(figure.field(), figure.as()).ifPresent(value -> typed.put(key, value)));
        printedAlarm.flatMap(reading::value).ifPresent(day -> typed.put(KeyFigure.PRINTED_ALARM, new Shown.Day(day)));
        var set = setting.flatMap(both -> both.read(reading));
        set.ifPresent(both -> {
            typed.put(KeyFigure.STRENGTH, both.strength());
            typed.put(KeyFigure.DOSE, both.perDay());
        });
        return new Again(typed, set.map(Setting::dosing));
    }

    private void look() {
        fields.unmark();
        var reading = new Reading();
        read(reading);
        reading.mark(say);
    }

    private void send() {
        fields.unmark();
        var reading = new Reading();
        var again = read(reading);
        if (!reading.isWhole()) {
            reading.refuse(say);
            return;
        }
        try {
            check.accept(again);
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields.named(), say.words(), say.language());
        }
    }
}
