package org.hearthway.access.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.child.ChildData;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** What is entered about a child. What was typed stays when it is refused. */
final class ChildForm {

    private static final int NOT_RECORDED = 0;

    private final Words words;
    private final Language language;
    private final TextField usedName;
    private final TextField familyName;
    private final DayField birthDate;
    private final Select<Integer> gmfcs = new Select<>();
    private final Select<Integer> skinTone = new Select<>();

    ChildForm(Words words, Language language) {
        this.words = words;
        this.language = language;
        usedName = new TextField(say("access.child.used-name"));
        usedName.setId("child-used-name");
        familyName = new TextField(say("access.child.family-name"));
        familyName.setId("child-family-name");
        birthDate = new DayField(say("access.child.birth-date"), words, language);
        birthDate.setId("child-birth-date");
        gmfcs.setLabel(say("access.child.gmfcs"));
        gmfcs.setItems(NOT_RECORDED, 1, 2, 3, 4, 5);
        gmfcs.setItemLabelGenerator(
                level -> level == NOT_RECORDED ? say("access.child.not-recorded") : String.valueOf(level));
        gmfcs.setValue(NOT_RECORDED);
        skinTone.setLabel(say("access.child.skin-tone"));
        skinTone.setItems(1, 2, 3, 4);
        skinTone.setItemLabelGenerator(tone -> say("access.child.skin-tone." + tone));
        skinTone.setValue(2);
    }

    ChildForm with(ChildData data) {
        usedName.setValue(data.usedName());
        familyName.setValue(data.familyName());
        birthDate.setValue(data.birthDate());
        gmfcs.setValue(data.gmfcs().orElse(NOT_RECORDED));
        skinTone.setValue(data.skinTone());
        return this;
    }

    /**
     * Draws it.
     *
     * @param saves takes what was entered, or refuses with {@link Invalid}
     */
    Div draw(String title, String button, Consumer<ChildData> saves) {
        var save = Tags.button("main wide", button, pressed -> save(saves));
        save.setId("child-save");
        return Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", title),
                usedName,
                familyName,
                birthDate,
                Tags.div("hw-pair", gmfcs, skinTone),
                save);
    }

    private void save(Consumer<ChildData> saves) {
        Map<String, HasValidation> fields = Map.of(
                "usedName", usedName,
                "familyName", familyName,
                "birthDate", birthDate,
                "gmfcs", gmfcs,
                "skinTone", skinTone);
        try {
            if (birthDate.getValue() == null) {
                throw new Invalid(Problem.at("birthDate", "access.child.no-birth-date"));
            }
            saves.accept(new ChildData(
                    usedName.getValue(),
                    familyName.getValue(),
                    birthDate.getValue(),
                    Optional.of(gmfcs.getValue()).filter(level -> level != NOT_RECORDED),
                    skinTone.getValue()));
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, words, language);
        }
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
