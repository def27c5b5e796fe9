package org.hearthway.path.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans.Decision;
import org.hearthway.path.Plans.Effect;
import org.hearthway.words.Words;

/** Takes a decision back, with a reason. */
final class TakeBackForm extends Section {

    private static final int REASON_MOST = 500;

    /** What the form asks of its page. */
    interface Acts {
        /** Takes it back; refuses with {@link Invalid}. */
        void takeBack(String reason);

        /** Drops everything typed. */
        void leave();
    }

    TakeBackForm(StageWords say, Words words, Decision decision, Effect effect, LocalDate today, Acts acts) {
        addClassNames("hw-sheet", "u-preview", "u-own", "hw-fields");
        var name = decision.name().in(say.language());
        getElement().setAttribute("aria-label", name);
        var reason = new TextField(say.say("path.change.reason"));
        reason.setMaxLength(REASON_MOST);
        reason.setWidthFull();
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("path.take-back", name))),
                Tags.p("hw-quiet", say.say("path.take-back.hint")),
                new EffectList(say, effect, today),
                reason,
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("path.change.leave"), pressed -> acts.leave()),
                        Tags.button("main", say.say("path.decided.take-back"), pressed -> {
                            try {
                                acts.takeBack(reason.getValue());
                            } catch (Invalid invalid) {
                                Told.problems(invalid.problems(), Map.of("reason", reason), words, say.language());
                            }
                        })));
        Shortcuts.addShortcutListener(this, acts::leave, Key.ESCAPE).listenOn(this);
    }
}
