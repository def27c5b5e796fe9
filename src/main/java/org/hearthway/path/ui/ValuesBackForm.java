package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Map;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.ClinicValues.Change;

/** Takes a change of values back, with a reason. */
final class ValuesBackForm extends Section {

    ValuesBackForm(ValueSay say, Change change, Component moved, Consumer<String> takeBack, Runnable leave) {
        addClassNames("hw-sheet", "u-preview", "u-own", "hw-values-form");
        var title = say.say("path.values.take-back.this", say.day(change.at()));
        getElement().setAttribute("aria-label", title);
        var reason = new TextArea(say.say("path.change.reason"));
        reason.setMaxLength(ClinicValues.REASON_MAX);
        reason.setManualValidation(true);
        reason.setWidthFull();
        add(
                Tags.div("hw-colh", Tags.h2("", title)),
                Tags.p("hw-quiet", say.say("path.values.take-back.hint")),
                Tags.div("hw-value-moves", moved),
                reason,
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("path.change.leave"), pressed -> leave.run()),
                        Tags.button("main", say.say("path.decided.take-back"), pressed -> {
                            try {
                                takeBack.accept(reason.getValue());
                            } catch (Invalid invalid) {
                                Told.problems(
                                        invalid.problems(), Map.of("reason", reason), say.words(), say.language());
                            }
                        })));
        Shortcuts.addShortcutListener(this, leave::run, Key.ESCAPE).listenOn(this);
        reason.focus();
    }
}
