package org.hearthway.path.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans.Change;
import org.hearthway.words.Words;

/** Makes a change that needs nothing but a reason: a stage put on the plan, a way out of a clash. */
final class ReadyForm extends Section {

    private static final int REASON_MOST = 500;

    ReadyForm(StageWords say, Words words, String title, Change change, String save, ChangeForm.Acts acts) {
        addClassNames("hw-sheet", "u-preview", "u-own", "hw-fields");
        getElement().setAttribute("aria-label", title);
        var reason = new TextField(say.say("path.change.reason"));
        reason.setMaxLength(REASON_MOST);
        reason.setWidthFull();
        var moves = new Div();
        add(
                Tags.div("hw-colh", Tags.h2("", title)),
                moves,
                reason,
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("path.change.leave"), pressed -> acts.leave()),
                        Tags.button("main", save, pressed -> {
                            try {
                                acts.save(change, reason.getValue());
                            } catch (Invalid invalid) {
                                Told.problems(invalid.problems(), Map.of("reason", reason), words, say.language());
                            }
                        })));
        try {
            moves.add(new MoveList(say, acts.preview(change), change));
        } catch (Invalid invalid) {
            moves.add(Tags.p("", words.say(say.language(), invalid.problems().get(0))));
        }
        Shortcuts.addShortcutListener(this, acts::leave, Key.ESCAPE).listenOn(this);
    }
}
