package org.hearthway.family;

import com.vaadin.flow.component.html.Div;
import java.util.Optional;
import org.hearthway.child.Standing;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Tags;
import org.springframework.stereotype.Component;

/** The sentence that stands over a family's pages while nothing is asked of it. */
@Component
class Pause {

    private final Standings standings;
    private final ClinicSettings clinic;

    Pause(Standings standings, ClinicSettings clinic) {
        this.standings = standings;
        this.clinic = clinic;
    }

    /** Whether anything may be asked of the family now. */
    boolean asksNothing(Reader reader) {
        return !standings.now(reader.viewer(), reader.id()).status().asksTheFamily();
    }

    /** The sentence, when there is one. */
    Optional<Div> draw(Reader reader) {
        return words(reader).map(words -> Tags.div("hw-pause", Tags.p("", words)));
    }

    /** The same as words. */
    Optional<String> words(Reader reader) {
        var now = standings.now(reader.viewer(), reader.id());
        if (now.status() == Status.ACTIVE) {
            return Optional.empty();
        }
        // until a second person confirmed it, a slip must not tell a family that their child died
        var key = "family.pause."
                + (now.waitsForSecondPerson() ? "WAITS" : now.status().name());
        var service = now.handover().map(Standing.Handover::service).orElse("");
        return Optional.of(reader.say(key, reader.name(), clinic.officeLine(), service));
    }
}
