package org.hearthway.choosing.ui;

import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.function.Function;
import org.hearthway.base.AccountId;
import org.hearthway.choosing.Decision;
import org.hearthway.parts.Tags;

/** Everything that was decided, newest first; what was decided earlier stays readable. */
final class DecisionHistory extends Section {

    DecisionHistory(Telling say, List<Decision> decisions, Function<AccountId, String> names) {
        addClassNames("hw-sheet", "u-edged", "hw-choice-path");
        getElement().setAttribute("aria-label", say.say("choosing.decided"));
        add(Tags.h2("u-xl", say.say("choosing.decided")));
        for (var decision : decisions) {
            var data = decision.data();
            add(Tags.div(
                    "hw-decided",
                    Tags.span(
                            "hw-b",
                            say.say(
                                    "choosing.decided.on",
                                    say.day(data.day()),
                                    decision.name().map(say::in).orElseGet(() -> say.say("choosing.decide.none")))),
                    Tags.span("", data.reason()),
                    Tags.span("hw-sub", say.say("choosing.decided.present", data.present())),
                    Tags.span("hw-sub", say.say("choosing.decided.by", names.apply(decision.by())))));
        }
    }
}
