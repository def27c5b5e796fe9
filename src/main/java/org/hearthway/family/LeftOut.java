package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.FamilyTimes;

/** What of the program finds no place in the family's times of a week, said honestly. */
@org.springframework.stereotype.Component
class LeftOut {

    private final FamilyTimes times;

    LeftOut(FamilyTimes times) {
        this.times = times;
    }

    /** The strip for the week of a day; empty when all fits. */
    Optional<Component> strip(Reader reader, LocalDate day) {
        return times.fit(reader.viewer(), reader.id(), day).map(fit -> {
            var words = Tags.div("", Bits.el("b", "", reader.say("family.left-out.title")));
            fit.out()
                    .forEach(out -> words.add(Bits.el(
                            "span",
                            "u-block",
                            reader.say(
                                    "family.left-out.one",
                                    reader.text(out.exercise().name()),
                                    out.out().sessions()))));
            words.add(Bits.el("span", "u-block hw-quiet", reader.say("family.left-out.team")));
            return Bits.strip("quiet u-mb3", Icon.INFO, words);
        });
    }
}
