package org.hearthway.access.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.content.SignOff;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** Sends a text back with a reason. What was typed stays when it is refused. */
final class SendBackForm extends Div {

    SendBackForm(TextState state, ClinicPage page, SignOff signOff, Runnable changed) {
        addClassName("hw-own-form");
        var seen = state.decision().map(SignOff.Decision::number).orElse(0);
        var reason = new TextArea(page.say("access.texts.reason"));
        reason.setHelperText(page.say("access.texts.reason.note"));
        reason.setManualValidation(true);
        reason.setWidthFull();
        var send = Tags.button("main", page.say("access.texts.send-back"), pressed -> {
            try {
                page.attempt(() -> {
                    signOff.sendBack(page.viewer(), state.text().item(), reason.getValue(), seen);
                    Told.done(page.say("access.texts.sent-back"));
                    changed.run();
                });
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), Map.of("reason", reason), page.words, page.language);
            }
        });
        var cancel = Tags.button("plain", page.say("access.own.cancel"), pressed -> changed.run());
        add(reason, Tags.div("hw-text-acts", send, cancel));
        reason.focus();
    }
}
