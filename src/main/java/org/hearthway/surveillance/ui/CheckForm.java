package org.hearthway.surveillance.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.surveillance.Check;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.Surveillance.Matter;
import org.hearthway.surveillance.engine.Watched;

/** Records a check as it was read, or corrects one. */
final class CheckForm extends Section {

    /** What the form asks of its page. */
    interface Acts {
        /** Saves; refuses with {@link Invalid}. */
        void save(CheckData data);

        /** Says that the check never took place. */
        void takeBack();

        /** Drops what was typed. */
        void leave();
    }

    private final transient RuleWords say;
    private final transient Matter matter;
    private final DayField day;
    private final TextField who;
    private final BigDecimalField left;
    private final BigDecimalField right;
    private final IntegerField cobb;
    private final Checkbox stable;
    private final TextArea note;

    CheckForm(RuleWords say, Matter matter, LocalDate today, Optional<Check> known, Acts acts) {
        this.say = say;
        this.matter = matter;
        var was = known.map(Check::data);
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields");
        var title =
                say.say(known.isPresent() ? "surveillance.form.correct" : "surveillance.record." + matter.watched());
        getElement().setAttribute("aria-label", title);
        day = new DayField(say.say("surveillance.field.day"), say.words(), say.language());
        day.setValue(was.map(CheckData::day).orElse(today));
        day.setId("check-day");
        who = new TextField(say.say("surveillance.field.who"));
        who.setValue(was.map(CheckData::who).orElse(""));
        who.setId("check-who");
        left = percent("left", was.flatMap(CheckData::left));
        right = percent("right", was.flatMap(CheckData::right));
        cobb = new IntegerField(say.say("surveillance.field.cobb"));
        was.flatMap(CheckData::cobb).ifPresent(cobb::setValue);
        cobb.setId("check-cobb");
        stable = new Checkbox(say.say("surveillance.field.stable"));
        stable.setValue(was.map(CheckData::stable).orElse(false));
        note = new TextArea(say.say("surveillance.field.note"));
        note.setValue(was.map(CheckData::note).orElse(""));
        note.setWidthFull();
        add(Tags.div("hw-colh", Tags.h2("", title)), Tags.div("u-two", day, who), numbers(), stable, note);
        if (matter.displacedFrom().isPresent()) {
            add(Tags.p("hw-sub u-my2", say.say("surveillance.field.as-read")));
        }
        var buttons = Tags.div("u-row u-wrap u-end");
        if (known.isPresent()) {
            var back = Tags.button("text", say.say("surveillance.take-back"), pressed -> settle(acts::takeBack));
            back.setId("check-take-back");
            buttons.add(back);
        }
        var save = Tags.button("main", say.say("surveillance.save"), pressed -> settle(() -> acts.save(data())));
        save.setId("check-save");
        buttons.add(Tags.button("plain", say.say("surveillance.leave"), pressed -> acts.leave()), save);
        add(buttons);
    }

    private BigDecimalField percent(String side, Optional<BigDecimal> known) {
        var field = new BigDecimalField(say.say("surveillance.field." + side));
        field.setLocale(say.language().locale());
        known.ifPresent(field::setValue);
        field.setWidthFull();
        field.setId("check-" + side);
        return field;
    }

    private Component numbers() {
        return matter.watched() == Watched.HIPS ? Tags.div("u-two", left, right) : cobb;
    }

    private CheckData data() {
        var hips = matter.watched() == Watched.HIPS;
        return new CheckData(
                matter.watched(),
                day.getOptionalValue()
                        .orElseThrow(() -> new Invalid(Problem.at("day", "surveillance.problem.day-missing"))),
                who.getValue(),
                left.getOptionalValue().filter(typed -> hips),
                right.getOptionalValue().filter(typed -> hips),
                cobb.getOptionalValue().filter(typed -> !hips),
                stable.getValue(),
                note.getValue());
    }

    private void settle(Runnable act) {
        Map<String, HasValidation> fields =
                Map.of("day", day, "who", who, "left", left, "right", right, "cobb", cobb, "note", note);
        fields.values().forEach(field -> field.setInvalid(false));
        try {
            act.run();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, say.words(), say.language());
        }
    }
}
