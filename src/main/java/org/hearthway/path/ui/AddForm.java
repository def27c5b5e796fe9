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
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.words.Words;

/** Puts a stage on the plan that is there only if needed: when it would be stands there before it is saved. */
final class AddForm extends Section {

    private static final int REASON_MOST = 500;

    AddForm(StageWords say, Words words, Stage stage, ChangeForm.Acts acts) {
        addClassNames("hw-sheet", "u-preview", "u-own", "hw-fields");
        var name = stage.name().in(say.language());
        getElement().setAttribute("aria-label", name);
        var change = new Change.Add(stage.id());
        var reason = new TextField(say.say("path.change.reason"));
        reason.setMaxLength(REASON_MOST);
        reason.setWidthFull();
        var moves = new Div();
        add(
                Tags.div("hw-colh", Tags.h2("", name)),
                moves,
                reason,
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("path.change.leave"), pressed -> acts.leave()),
                        Tags.button("main", say.say("path.add.save"), pressed -> {
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
