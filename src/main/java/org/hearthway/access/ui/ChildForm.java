package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.child.Allergies;
import org.hearthway.child.ChildData;
import org.hearthway.child.Names;
import org.hearthway.child.engine.Gestation;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** What is entered about a child. What was typed stays when it is refused. */
final class ChildForm {

    private static final int NOT_RECORDED = 0;

    /** How far the question of allergies has come. */
    private enum Asked {
        NOT_ASKED,
        NONE,
        SOME
    }

    private final Words words;
    private final Language language;
    private final TextField usedName;
    private final TextField givenName;
    private final TextField familyName;
    private final TextField secondSurname;
    private final DayField birthDate;
    private final IntegerField weeks;
    private final IntegerField days;
    private final Select<Integer> gmfcs = new Select<>();
    private final Select<Integer> skinTone = new Select<>();
    private final Select<Asked> asked = new Select<>();
    private final TextArea allergies;
    private final TextField interpreter;

    ChildForm(Words words, Language language) {
        this.words = words;
        this.language = language;
        usedName = text("used-name");
        givenName = text("given-name");
        givenName.setHelperText(say("access.child.given-name.note"));
        familyName = text("family-name");
        secondSurname = text("second-surname");
        birthDate = new DayField(say("access.child.birth-date"), words, language);
        birthDate.setId("child-birth-date");
        weeks = number("weeks");
        days = number("days");
        gmfcs.setLabel(say("access.child.gmfcs"));
        gmfcs.setItems(NOT_RECORDED, 1, 2, 3, 4, 5);
        gmfcs.setItemLabelGenerator(
                level -> level == NOT_RECORDED ? say("access.child.not-recorded") : String.valueOf(level));
        gmfcs.setValue(NOT_RECORDED);
        skinTone.setLabel(say("access.child.skin-tone"));
        skinTone.setItems(1, 2, 3, 4);
        skinTone.setItemLabelGenerator(tone -> say("access.child.skin-tone." + tone));
        skinTone.setValue(2);
        asked.setLabel(say("access.child.allergies"));
        asked.setItems(Asked.values());
        asked.setItemLabelGenerator(each -> say("access.child.allergies." + each.name()));
        asked.setValue(Asked.NOT_ASKED);
        asked.setId("child-allergies-asked");
        allergies = new TextArea(say("access.child.allergies.which"));
        allergies.setHelperText(say("access.child.allergies.note"));
        allergies.setId("child-allergies");
        allergies.setVisible(false);
        asked.addValueChangeListener(change -> allergies.setVisible(change.getValue() == Asked.SOME));
        interpreter = text("interpreter");
        interpreter.setHelperText(say("access.child.interpreter.note"));
    }

    private TextField text(String name) {
        var field = new TextField(say("access.child." + name));
        field.setId("child-" + name);
        return field;
    }

    private IntegerField number(String name) {
        var field = new IntegerField(say("access.child." + name));
        field.setId("child-" + name);
        return field;
    }

    ChildForm with(ChildData data) {
        usedName.setValue(data.names().used());
        givenName.setValue(data.names().given());
        familyName.setValue(data.names().surname());
        secondSurname.setValue(data.names().secondSurname());
        birthDate.setValue(data.birthDate());
        weeks.setValue(data.gestation().map(Gestation::weeks).orElse(null));
        days.setValue(data.gestation().map(Gestation::days).orElse(null));
        gmfcs.setValue(data.gmfcs().orElse(NOT_RECORDED));
        skinTone.setValue(data.skinTone());
        asked.setValue(
                !data.allergies().asked()
                        ? Asked.NOT_ASKED
                        : data.allergies().known().isEmpty() ? Asked.NONE : Asked.SOME);
        allergies.setValue(String.join("\n", data.allergies().known()));
        interpreter.setValue(data.interpreter());
        return this;
    }

    /**
     * Draws it.
     *
     * @param saves takes what was entered, or refuses with {@link Invalid}
     */
    Div draw(String title, String button, Consumer<ChildData> saves, Component... below) {
        var save = Tags.button("main wide", button, pressed -> save(saves));
        save.setId("child-save");
        var sheet = Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", title),
                usedName,
                givenName,
                Tags.div("hw-pair", familyName, secondSurname),
                birthDate,
                Tags.div("hw-pair", weeks, days),
                Tags.div("hw-pair", gmfcs, skinTone),
                asked,
                allergies,
                interpreter,
                save);
        sheet.add(below);
        return sheet;
    }

    private void save(Consumer<ChildData> saves) {
        Map<String, HasValidation> fields = Map.of(
                "usedName", usedName,
                "givenName", givenName,
                "familyName", familyName,
                "secondSurname", secondSurname,
                "birthDate", birthDate,
                "gestation", weeks,
                "gmfcs", gmfcs,
                "skinTone", skinTone,
                "allergies", allergies,
                "interpreter", interpreter);
        try {
            saves.accept(entered());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, words, language);
        }
    }

    private ChildData entered() {
        var problems = new ArrayList<Problem>();
        if (birthDate.getValue() == null) {
            problems.add(Problem.at("birthDate", "access.child.no-birth-date"));
        }
        var gestation = gestation(problems);
        if (asked.getValue() == Asked.SOME && allergies.getValue().isBlank()) {
            problems.add(Problem.at("allergies", "access.child.allergies.empty"));
        }
        Invalid.ifAny(problems);
        return new ChildData(
                new Names(usedName.getValue(), givenName.getValue(), familyName.getValue(), secondSurname.getValue()),
                birthDate.getValue(),
                gestation,
                Optional.of(gmfcs.getValue()).filter(level -> level != NOT_RECORDED),
                skinTone.getValue(),
                new Allergies(asked.getValue() != Asked.NOT_ASKED, known()),
                interpreter.getValue());
    }

    private Optional<Gestation> gestation(List<Problem> problems) {
        var entered = Optional.ofNullable(weeks.getValue());
        var onTop = Optional.ofNullable(days.getValue());
        if (entered.isEmpty() && onTop.isEmpty() && !weeks.isInvalid() && !days.isInvalid()) {
            return Optional.empty();
        }
        var possible = entered.filter(w -> Gestation.isPossible(w, onTop.orElse(0)));
        if (possible.isEmpty()) {
            problems.add(
                    Problem.at("gestation", "access.child.gestation", Gestation.FEWEST_WEEKS, Gestation.MOST_WEEKS));
        }
        return possible.map(w -> new Gestation(w, onTop.orElse(0)));
    }

    private List<String> known() {
        return asked.getValue() == Asked.SOME
                ? allergies
                        .getValue()
                        .lines()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty())
                        .collect(Collectors.toList())
                : List.of();
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
