package org.hearthway.pump.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.KeyModifier;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.PumpRules;
import org.hearthway.pump.Pumps.FillData;
import org.hearthway.pump.engine.RefillBy;
import org.hearthway.words.Words;

/** Records a fill from the device print-out, and computes the refill-by date while it is typed. */
final class FillForm extends Section {

    private static final int NOTE_MOST = 500;

    /** What the form asks of its page. */
    interface Acts {
        /** Computes; refuses with {@link Invalid}. */
        RefillBy check(FillData data);

        /** Saves; refuses with {@link Invalid}. */
        void save(FillData data);
    }

    private final transient PumpWords say;
    private final transient Words words;
    private final transient Acts acts;
    private final DayField filled;
    private final DayField alarm;
    private final IntegerField margin;
    private final TextField note;
    private final Div sums = new Div();

    FillForm(PumpWords say, Words words, PumpRules rules, LocalDate today, Acts acts) {
        this.say = say;
        this.words = words;
        this.acts = acts;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "u-own", "hw-fields");
        getElement().setAttribute("aria-label", say.say("pump.form.title"));
        filled = new DayField(say.say("pump.form.filled"), words, say.language());
        filled.setValue(today);
        alarm = new DayField(say.say("pump.form.alarm"), words, say.language());
        margin = new IntegerField(say.say("pump.form.margin"));
        margin.setValue(rules.marginDays());
        margin.setStepButtonsVisible(true);
        margin.setHelperText(
                say.say("pump.form.margin.help", PumpRules.LEAST_MARGIN, PumpRules.MOST_MARGIN, rules.marginDays()));
        margin.setValueChangeMode(ValueChangeMode.LAZY);
        note = new TextField(say.say("pump.form.note"));
        note.setMaxLength(NOTE_MOST);
        note.setWidthFull();
        filled.addValueChangeListener(change -> compute());
        alarm.addValueChangeListener(change -> compute());
        margin.addValueChangeListener(change -> compute());
        sums.getElement().setAttribute("aria-live", "polite");
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("pump.form.title"))),
                Tags.div("u-two", filled, alarm),
                margin,
                sums,
                note,
                Tags.p("hw-sub u-mb2", say.say("pump.form.caution")),
                Tags.div("u-row u-end", Tags.button("main", say.say("pump.form.save"), pressed -> save())));
        Shortcuts.addShortcutListener(this, this::save, Key.ENTER, KeyModifier.CONTROL)
                .listenOn(this);
        compute();
    }

    private Map<String, HasValidation> fields() {
        return Map.of("filled", filled, "alarm", alarm, "margin", margin, "note", note);
    }

    private FillData data() {
        var problems = new ArrayList<Problem>();
        if (filled.isEmpty()) {
            problems.add(Problem.at("filled", "pump.problem.filled.missing"));
        }
        if (alarm.isEmpty()) {
            problems.add(Problem.at("alarm", "pump.problem.alarm.missing"));
        }
        Invalid.ifAny(problems);
        // an empty margin is out of bounds and refused as such
        return new FillData(
                filled.getValue(), alarm.getValue(), margin.isEmpty() ? 0 : margin.getValue(), note.getValue());
    }

    private void compute() {
        sums.removeAll();
        fields().values().forEach(field -> field.setInvalid(false));
        if (filled.isEmpty() || alarm.isEmpty()) {
            sums.add(Tags.p("hw-sub u-my2", say.say("pump.form.wait")));
            return;
        }
        try {
            sums.add(say.sums(acts.check(data())));
        } catch (Invalid invalid) {
            // marks without taking the focus away from where the person types
            for (var problem : invalid.problems()) {
                var field = fields().get(problem.field());
                if (field != null) {
                    field.setErrorMessage(words.say(say.language(), problem));
                    field.setInvalid(true);
                }
            }
        }
    }

    private void save() {
        try {
            acts.save(data());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), words, say.language());
        }
    }
}
