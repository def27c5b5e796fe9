package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.medicine.ToxinSessions.Place;
import org.hearthway.medicine.ToxinSessions.Shown;
import org.hearthway.medicine.ToxinSessions.Side;
import org.hearthway.parts.Tags;
import org.hearthway.sign.Sign.Urgency;
import org.springframework.core.annotation.Order;

/** The toxin shots: when, where, and not before which day again. */
@Order(20)
@org.springframework.stereotype.Component
class ToxinSection implements AlongsideSection {

    private static final String SWALLOW = "toxin-swallow";

    private final ToxinSessions sessions;
    private final SignToCall signs;
    private final Pause pauses;

    ToxinSection(ToxinSessions sessions, SignToCall signs, Pause pauses) {
        this.sessions = sessions;
        this.signs = signs;
        this.pauses = pauses;
    }

    @Override
    public Optional<Component> draw(Reader reader) {
        var shown = sessions.shown(reader.viewer(), reader.id());
        // a day to come is nothing to tell while nothing is asked of the family
        var planned = shown.planned().filter(day -> !pauses.asksNothing(reader));
        if (shown.last().isEmpty() && planned.isEmpty()) {
            return Optional.empty();
        }
        var section = Tags.section("hw-stack u-gap3", reader.say("family.toxin.title"));
        section.add(Tags.h2("hw-h2 u-m0", reader.say("family.toxin.title")));
        var sheet = Tags.div("hw-sheet hw-stack u-gap2");
        shown.last().ifPresent(day -> {
            sheet.add(
                    Bits.el("h3", "u-l", reader.say("family.toxin.last", PathWords.date(reader, day))),
                    places(reader, shown.places()));
            next(reader, shown).ifPresent(sheet::add);
        });
        planned.ifPresent(day ->
                sheet.add(Tags.p("hw-b", reader.say("family.toxin.planned", PathWords.date(reader, day)))));
        if (shown.last().isPresent()) {
            signs.draw(reader, SWALLOW, Urgency.NOW).forEach(sheet::add);
        }
        section.add(sheet);
        return Optional.of(section);
    }

    private static Optional<Component> next(Reader reader, Shown shown) {
        return shown.notBefore()
                .map(day -> Tags.p("", reader.say("family.toxin.not-before", PathWords.date(reader, day))));
    }

    private static Component places(Reader reader, List<Place> places) {
        var list = Bits.el("ul", "hw-places");
        places.forEach(place -> list.add(Bits.el(
                "li",
                "",
                reader.large(
                        reader.say("family.toxin.place", reader.text(place.muscle()), sides(reader, place.sides()))))));
        return list;
    }

    private static String sides(Reader reader, Set<Side> sides) {
        return reader.say(
                sides.size() > 1
                        ? "family.toxin.side.BOTH"
                        : "family.toxin.side." + sides.iterator().next());
    }
}
