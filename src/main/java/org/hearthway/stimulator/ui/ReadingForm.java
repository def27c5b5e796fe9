package org.hearthway.stimulator.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Reading.Found;
import org.hearthway.stimulator.Reading.Other;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.Reading.Setting;
import org.hearthway.stimulator.Reading.Side;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.ImpedanceRule.Pair;
import org.hearthway.stimulator.engine.Window;

/** Records what the device showed, or corrects it, and computes the window while it is typed. */
final class ReadingForm extends Section {

    private static final int NOTE_MOST = 500;

    /** What the form asks of its page. */
    interface Acts {
        /** Computes; refuses with {@link Invalid}. */
        Window check(ReadingData data);

        /** Saves; the reason is empty for a new one; refuses with {@link Invalid}. */
        void save(ReadingData data, String reason);

        /** Says that the reading never was. */
        void takeBack(String reason);

        /** Drops what was typed. */
        void leave();
    }

    private final transient StimulatorWords say;
    private final transient Acts acts;
    private final Select<String> generator = new Select<>();
    private final DayField day;
    private final TimePicker time;
    private final BigDecimalField level;
    private final Select<BatteryUnit> unit = new Select<>();
    private final DayField estimate;
    private final Select<Found> found = new Select<>();
    private final SideFields left;
    private final SideFields right;
    private final TextArea impedances;
    private final TextArea others;
    private final IntegerField chargeEvery;
    private final DayField lastCharge;
    private final TextArea note;
    private final Checkbox emergency;
    private final TextField reason;
    private final Div sums = new Div();
    private final Div charging;
    private final boolean correction;

    /**
     * Draws it.
     *
     * @param serials generators that can be read; empty when none is on record
     * @param charged whether at least one of them may be charged at home
     * @param usual the unit that this child's device gives
     */
    ReadingForm(
            StimulatorWords say,
            List<String> serials,
            boolean charged,
            BatteryUnit usual,
            LocalDateTime now,
            Optional<Reading> known,
            Acts acts) {
        this.say = say;
        this.acts = acts;
        this.correction = known.isPresent();
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "u-own", "hw-fields");
        var title = say.say(correction ? "stimulator.form.correct" : "stimulator.form.title");
        getElement().setAttribute("aria-label", title);
        generator.setLabel(say.say("stimulator.field.generator"));
        generator.setItems(serials);
        generator.setVisible(serials.size() > 1);
        serials.stream().findFirst().ifPresent(generator::setValue);
        day = dayField("stimulator.field.day", "reading-day");
        day.setValue(now.toLocalDate());
        time = new TimePicker(say.say("stimulator.field.time"), now.toLocalTime());
        time.setLocale(say.language().locale());
        time.setId("reading-time");
        level = new BigDecimalField(say.say("stimulator.field.level"));
        level.setLocale(say.language().locale());
        level.setValueChangeMode(ValueChangeMode.LAZY);
        level.setId("reading-level");
        unit.setLabel(say.say("stimulator.field.unit"));
        unit.setItems(BatteryUnit.values());
        unit.setItemLabelGenerator(one -> say.say("stimulator.unit." + one));
        unit.setValue(usual);
        unit.setId("reading-unit");
        estimate = dayField("stimulator.field.estimate", "reading-estimate");
        estimate.setWidthFull();
        found.setLabel(say.say("stimulator.field.found"));
        found.setItems(Found.values());
        found.setItemLabelGenerator(one -> say.say("stimulator.found." + one));
        found.setValue(Found.NOT_LOOKED);
        found.setId("reading-found");
        left = new SideFields(say, Side.LEFT, "reading-", true);
        right = new SideFields(say, Side.RIGHT, "reading-", true);
        impedances = area("stimulator.field.impedances", "stimulator.field.impedances.help", "reading-impedances");
        others = area("stimulator.field.others", "stimulator.field.others.help", "reading-others");
        chargeEvery = new IntegerField(say.say("stimulator.field.charge-every"));
        chargeEvery.setId("reading-charge-every");
        chargeEvery.setWidthFull();
        lastCharge = dayField("stimulator.field.last-charge", "reading-last-charge");
        charging = Tags.div("u-two", chargeEvery, lastCharge);
        charging.setVisible(charged);
        note = area("stimulator.field.note", "", "reading-note");
        note.setMaxLength(NOTE_MOST);
        emergency = new Checkbox(say.say("stimulator.field.emergency"));
        emergency.setId("reading-emergency");
        emergency.setValue(serials.isEmpty());
        reason = new TextField(say.say("stimulator.field.reason"));
        reason.setWidthFull();
        reason.setId("reading-reason");
        reason.setVisible(correction);
        sums.getElement().setAttribute("aria-live", "polite");
        level.setWidthFull();
        time.setWidthFull();
        unit.setWidthFull();
        found.setWidthFull();
        generator.setWidthFull();
        known.map(Reading::data).ifPresent(this::set);
        listen();
        left.onChange(this::compute);
        right.onChange(this::compute);
        lay(title);
        compute();
    }

    private DayField dayField(String label, String id) {
        var field = new DayField(say.say(label), say.words(), say.language());
        field.setId(id);
        return field;
    }

    private TextArea area(String label, String help, String id) {
        var field = new TextArea(say.say(label));
        field.setWidthFull();
        if (!help.isEmpty()) {
            field.setHelperText(say.say(help));
        }
        field.setId(id);
        return field;
    }

    private void listen() {
        List.<HasValue<?, ?>>of(day, time, level, unit, generator, estimate, emergency)
                .forEach(field -> field.addValueChangeListener(change -> compute()));
    }

    private void lay(String title) {
        var buttons = Tags.div("u-row u-wrap u-end");
        if (correction) {
            var back = Tags.button(
                    "text",
                    say.say("stimulator.form.never-was"),
                    pressed -> settle(() -> acts.takeBack(reason.getValue())));
            back.setId("reading-take-back");
            buttons.add(back, Tags.button("plain", say.say("stimulator.form.leave"), pressed -> acts.leave()));
        }
        var save = Tags.button(
                "main",
                say.say(correction ? "stimulator.form.save-correction" : "stimulator.form.save"),
                pressed -> settle(() -> acts.save(data(), reason.getValue())));
        save.setId("reading-save");
        buttons.add(save);
        add(
                Tags.div("hw-colh", Tags.h2("", title)),
                generator,
                Tags.div("u-two", day, time),
                Tags.div("u-two", level, unit),
                estimate,
                sums,
                found,
                left,
                right,
                impedances,
                others,
                charging,
                note,
                emergency,
                Tags.p("hw-sub u-mb2", say.say("stimulator.form.emergency")),
                reason,
                Tags.p("hw-sub u-mb2", say.say("stimulator.form.caution")),
                buttons);
    }

    private void set(ReadingData data) {
        generator.setValue(data.generator());
        day.setValue(data.day());
        time.setValue(data.taken().toLocalTime());
        data.level().ifPresent(level::setValue);
        unit.setValue(data.unit());
        data.estimate().ifPresent(estimate::setValue);
        found.setValue(data.found());
        data.settings().forEach(setting -> (setting.side() == Side.LEFT ? left : right).set(setting));
        impedances.setValue(data.impedances().stream()
                .map(pair -> pair.name() + " " + pair.ohms())
                .reduce((one, next) -> one + "\n" + next)
                .orElse(""));
        others.setValue(data.others().stream()
                .map(other ->
                        other.name() + "; " + other.value() + (other.unit().isBlank() ? "" : "; " + other.unit()))
                .reduce((one, next) -> one + "\n" + next)
                .orElse(""));
        data.chargeEveryDays().ifPresent(chargeEvery::setValue);
        data.lastCharge().ifPresent(lastCharge::setValue);
        note.setValue(data.note());
        emergency.setValue(data.emergency());
    }

    private Map<String, HasValidation> fields() {
        var fields = new HashMap<String, HasValidation>(Map.of(
                "generator", generator,
                "taken", day,
                "level", level,
                "estimate", estimate,
                "impedances", impedances,
                "others", others,
                "chargeEveryDays", chargeEvery,
                "lastCharge", lastCharge,
                "note", note,
                "reason", reason));
        fields.putAll(left.fields());
        fields.putAll(right.fields());
        return fields;
    }

    private ReadingData data() {
        var problems = new ArrayList<Problem>();
        var data = typed(problems);
        Invalid.ifAny(problems);
        return data.orElseThrow();
    }

    private Optional<ReadingData> typed(List<Problem> problems) {
        var settings = new ArrayList<Setting>();
        left.typed(problems).ifPresent(settings::add);
        right.typed(problems).ifPresent(settings::add);
        var pairs = lines(impedances, problems, "impedances", "stimulator.problem.impedance-line", ReadingForm::pair);
        var shown = lines(others, problems, "others", "stimulator.problem.other-line", ReadingForm::other);
        if (day.isEmpty() || time.isEmpty()) {
            problems.add(Problem.at("taken", "stimulator.problem.taken-missing"));
            return Optional.empty();
        }
        return Optional.of(new ReadingData(
                Optional.ofNullable(generator.getValue()).orElse(""),
                day.getValue().atTime(time.getOptionalValue().orElse(LocalTime.MIDNIGHT)),
                level.getOptionalValue(),
                unit.getValue(),
                estimate.getOptionalValue(),
                found.getValue(),
                pairs,
                settings,
                shown,
                chargeEvery.getOptionalValue(),
                lastCharge.getOptionalValue(),
                note.getValue(),
                emergency.getValue()));
    }

    private static <T> List<T> lines(
            TextArea field, List<Problem> problems, String name, String key, Function<String, Optional<T>> read) {
        var all = new ArrayList<T>();
        var number = 0;
        for (var line : field.getValue().lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            var found = read.apply(line.strip());
            if (found.isEmpty()) {
                problems.add(Problem.at(name, key, number));
                return all;
            }
            all.add(found.get());
        }
        return all;
    }

    /** The last word is the ohms, all before it the pair. */
    private static Optional<Pair> pair(String line) {
        var cut = line.lastIndexOf(' ');
        if (cut < 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Pair(line.substring(0, cut).strip(), Integer.parseInt(line.substring(cut + 1))));
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    private static Optional<Other> other(String line) {
        var parts = line.split(";", -1);
        if (parts.length < 2 || parts.length > 3 || parts[0].isBlank() || parts[1].isBlank()) {
            return Optional.empty();
        }
        return Optional.of(new Other(parts[0].strip(), parts[1].strip(), parts.length == 3 ? parts[2].strip() : ""));
    }

    /** Computes without what is half typed, and marks what is wrong without taking the focus away. */
    private void compute() {
        sums.removeAll();
        fields().values().forEach(field -> field.setInvalid(false));
        if (level.isEmpty() && !emergency.getValue()) {
            sums.add(Tags.p("hw-sub u-my2", say.say("stimulator.form.wait")));
            return;
        }
        typed(new ArrayList<>()).ifPresent(data -> {
            try {
                sums.add(say.shortly(acts.check(data)));
            } catch (Invalid invalid) {
                for (var problem : invalid.problems()) {
                    var field = fields().get(problem.field());
                    if (field != null) {
                        field.setErrorMessage(say.words().say(say.language(), problem));
                        field.setInvalid(true);
                    }
                }
            }
        });
    }

    private void settle(Runnable act) {
        try {
            act.run();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), say.words(), say.language());
        }
    }
}
