package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import java.util.List;
import java.util.Optional;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.engine.ProgramLine;

/**
 * A ring that counts a hold down, with a rest between holds; runs in the browser alone. It begins when asked, can be
 * paused, always shows the number and says it aloud at 10, 3 and 0.
 */
@Tag("hw-hold-ring")
@JsModule("context://offline/hold-ring.js")
final class HoldRing extends Component {

    private HoldRing(Reader reader, int seconds, int holds, int round, int rest, List<String> sides) {
        getElement().setAttribute("seconds", String.valueOf(seconds));
        getElement().setAttribute("holds", String.valueOf(holds));
        getElement().setAttribute("round", String.valueOf(round));
        getElement().setAttribute("rest", String.valueOf(rest));
        getElement().setAttribute("sides", String.join("|", sides));
        for (var word : List.of(
                "name", "start", "pause", "go-on", "again", "rest", "over", "seconds", "minutes", "hold", "left",
                "skip", "sound", "buzz")) {
            getElement().setAttribute("word-" + word, reader.say("family.ring." + word));
        }
    }

    /**
     * The ring for a dose with holds or minutes; empty for one that is only counted.
     *
     * @param usualRest seconds between two rounds where the therapist says none
     */
    static Optional<HoldRing> of(Reader reader, Planned planned, int usualRest) {
        var line = planned.line();
        var dose = line.dose();
        var rest = line.prescription().restSeconds().orElse(usualRest);
        if (dose.minutes() > 0) {
            return Optional.of(new HoldRing(reader, dose.minutes() * 60, dose.sets(), 1, rest, sides(reader, line)));
        }
        return dose.holdSeconds() > 0
                ? Optional.of(new HoldRing(
                        reader,
                        dose.holdSeconds(),
                        dose.sets() * dose.repetitions(),
                        dose.repetitions(),
                        rest,
                        sides(reader, line)))
                : Optional.empty();
    }

    /** The sides one after another; one without a name where the exercise has none. */
    static List<String> sides(Reader reader, ProgramLine line) {
        return switch (line.side()) {
            case NONE -> List.of("");
            case LEFT, RIGHT -> List.of(side(reader, line.side()));
            case EACH -> List.of(side(reader, ProgramLine.Side.RIGHT), side(reader, ProgramLine.Side.LEFT));
        };
    }

    private static String side(Reader reader, ProgramLine.Side side) {
        return reader.large(reader.say("family.side." + side));
    }
}
