package org.hearthway.equipment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** A form beside the list; what was typed stays when it is refused, with each field marked. */
abstract class Asked extends Section {

    private final transient Labels labels;
    private final Map<String, HasValidation> fields = new HashMap<>();

    Asked(Labels labels, String title) {
        this.labels = labels;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields");
        getElement().setAttribute("aria-label", title);
        add(Tags.div("hw-colh", Tags.h2("", title)));
    }

    final String say(String key, Object... args) {
        return labels.say(key, args);
    }

    final DayField day(String field, String key, Optional<LocalDate> known) {
        var day = new DayField(say(key), labels.words(), labels.language());
        known.ifPresent(day::setValue);
        return named(field, day);
    }

    final IntegerField number(String field, String key, Optional<Integer> known) {
        var number = new IntegerField(say(key));
        known.ifPresent(number::setValue);
        return named(field, number);
    }

    final TextArea text(String field, String key, String known) {
        var text = new TextArea(say(key));
        text.setValue(known);
        text.setWidthFull();
        return named(field, text);
    }

    /** A choice of an enum's constants, said by the key with the constant's name behind it. */
    final <E extends Enum<E>> Select<E> choice(String field, String key, String each, List<E> all) {
        var choice = new Select<E>();
        choice.setLabel(say(key));
        choice.setItems(all);
        choice.setItemLabelGenerator(one -> one == null ? "" : say(each + one));
        return named(field, choice);
    }

    final <F extends Component & HasValidation> F named(String field, F made) {
        fields.put(field, made);
        made.setId("equipment-" + field);
        return made;
    }

    /** A day that must be there; says so at its field when it is not. */
    static LocalDate needed(String field, DayField day) {
        return day.getOptionalValue()
                .orElseThrow(() -> new Invalid(Problem.at(field, "equipment.problem.day-missing")));
    }

    /** The buttons at the foot: drop it, or save. */
    final void end(Runnable leave, Runnable save) {
        var main = Tags.button("main", say("equipment.save"), pressed -> {
            fields.values().forEach(field -> field.setInvalid(false));
            try {
                save.run();
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, labels.words(), labels.language());
            }
        });
        main.setId("equipment-save");
        add(Tags.div("u-row u-end", Tags.button("plain", say("equipment.leave"), pressed -> leave.run()), main));
    }
}
