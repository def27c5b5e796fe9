package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Div;
import org.hearthway.base.Overtaken;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.program.Progress.Proposed;

/** That more is proposed by a line's own rule, with the days that carry it; one press puts it into the draft. */
final class ProposalStrip extends Div {

    /** For who may not write the program. */
    ProposalStrip(HowSay say, Proposed proposed) {
        addClassNames("hw-strip", "hw-proposed");
        getElement().setAttribute("role", "note");
        var days = say.words()
                .list(say.language(), proposed.days().stream().map(say::date).toList());
        var exercise = say.name(proposed.now().exercise());
        add(Tags.div(
                "",
                Tags.p("hw-b", say.say("proposed", exercise, say.dose(proposed.then()))),
                Tags.p("hw-s", say.say("proposed.why", say.dose(proposed.now()), days))));
    }

    /**
     * For who may.
     *
     * @param take puts it into the draft
     */
    ProposalStrip(HowSay say, Proposed proposed, Runnable take) {
        this(say, proposed);
        var press = Tags.button("plain hw-screen-only", say.say("proposed.take"), pressed -> {
            try {
                take.run();
                Told.done(say.say("proposed.taken"));
            } catch (Overtaken overtaken) {
                Told.couldNot(say.say("proposed.gone"));
            }
        });
        press.setAriaLabel(say.say("proposed.take.of", say.name(proposed.now().exercise())));
        add(press);
    }
}
