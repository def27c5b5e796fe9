package org.hearthway.family;

import com.vaadin.flow.component.HtmlContainer;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.CareTurns;
import org.hearthway.program.ProgramPauses;
import org.hearthway.program.ProgramPauses.Pause;
import org.springframework.stereotype.Component;

/** What a day says when its exercises rest: all of them, because somebody said so, or some by a rule of care. */
@Component
class RestingProgram {

    private final ProgramPauses pauses;
    private final CareTurns turns;

    RestingProgram(ProgramPauses pauses, CareTurns turns) {
        this.pauses = pauses;
        this.turns = turns;
    }

    /** Why the whole program rests that day, and the way to go on; empty when it does not. */
    Optional<HtmlContainer> whole(Reader reader, LocalDate day) {
        return pauses.all(reader.viewer(), reader.id()).stream()
                .filter(pause -> pause.holdsOn(day))
                .findFirst()
                .map(pause -> {
                    var words = Tags.div("", Tags.span("", said(reader, pause) + " "));
                    words.add(Tags.link("u-kiln", reader.address("rest"), reader.say("family.resting.change")));
                    return Bits.strip("u-mb3", Icon.INFO, words);
                });
    }

    /** "Ill since Monday, March 9. The exercises rest until Friday." */
    static String said(Reader reader, Pause pause) {
        var why = reader.say("family.resting.why." + pause.why().name());
        return pause.end()
                .map(end -> reader.say("family.resting.until", why, pause.from(), end))
                .orElseGet(() -> reader.say("family.resting.open", why, pause.from()));
    }

    /** What rests that day by a rule of care, each with the rule's own words and the day it is open again. */
    Optional<HtmlContainer> shut(Reader reader, LocalDate day) {
        var resting = turns.resting(reader.viewer(), reader.id(), day);
        if (resting.isEmpty()) {
            return Optional.empty();
        }
        var words = Tags.div("", Bits.el("b", "", reader.say("family.shut.title", resting.size())));
        resting.forEach(one -> {
            var line = Tags.p(
                    "",
                    reader.say(
                            "family.shut.one",
                            reader.text(one.exercise().name()),
                            one.care().until()));
            line.add(Bits.el(
                    "span", "u-block hw-quiet", reader.text(one.care().rule().says())));
            words.add(line);
        });
        return Optional.of(Bits.strip("quiet u-mb3", Icon.LOCK, words));
    }
}
