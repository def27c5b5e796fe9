package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Overtaken;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.program.HomeWeek.Moved;
import org.hearthway.program.Missed;
import org.hearthway.program.Missed.Offer;
import org.hearthway.program.Missed.To;

/** What was missed this week: where it could go, what is better left out and why, and what was moved already. */
@org.springframework.stereotype.Component
class MissedCard {

    private final Missed missed;
    private final Gate gate;

    MissedCard(Missed missed, Gate gate) {
        this.missed = missed;
        this.gate = gate;
    }

    /**
     * The card; empty when there is nothing to say.
     *
     * @param moved sessions that were moved already, to take back
     * @param most moves that are offered at most; what is better left out is told only where all are shown
     */
    Optional<Component> draw(Reader reader, List<Moved> moved, int most, Runnable changed) {
        var may = gate.allows(reader.viewer(), Action.LOG_SESSION, reader.id());
        var offers = missed.offers(reader.viewer(), reader.id());
        var moves = offers.stream().filter(offer -> offer.to().isPresent()).toList();
        var skips = offers.stream().filter(offer -> offer.why().isPresent()).toList();
        var back = moved.stream()
                .distinct()
                .filter(one -> !one.to().isBefore(reader.today()))
                .toList();
        var isWhole = most >= moves.size();
        if (moves.isEmpty() && back.isEmpty() && (skips.isEmpty() || most == 0)) {
            return Optional.empty();
        }
        var card = Tags.section("hw-sheet hw-told u-mt3 u-mb3", reader.say("family.missed.title"));
        card.add(Tags.h2("u-l", reader.say("family.missed.title")));
        moves.stream().limit(most).forEach(offer -> card.add(offered(reader, offer, may, changed)));
        back.forEach(one -> card.add(movedBack(reader, one, may, changed)));
        if (!isWhole) {
            card.add(Tags.link("hw-button plain wide", reader.address("week"), reader.say("family.missed.more")));
        } else if (!skips.isEmpty() && most > 0) {
            card.add(leftOut(reader, skips));
        }
        return Optional.of(card);
    }

    private Component offered(Reader reader, Offer offer, boolean may, Runnable changed) {
        var to = offer.to().orElseThrow();
        var name = reader.text(offer.exercise().name());
        var row = Tags.div(
                "hw-missed-row",
                Tags.div(
                        "",
                        Bits.el("b", "", reader.say("family.missed.one", name, weekday(reader, offer.day()))),
                        Bits.el("span", "u-block", reader.say("family.missed.could", when(reader, to)))));
        if (may) {
            var key = UUID.randomUUID();
            var button = Tags.button("soft", reader.say("family.missed.move"), pressed -> {
                try {
                    missed.move(reader.viewer(), reader.id(), key, offer);
                    Told.done(reader.say("family.missed.moved", name, when(reader, to)));
                } catch (Overtaken overtaken) {
                    Told.couldNot(reader.say("family.missed.overtaken"));
                }
                changed.run();
            });
            button.getElement()
                    .setAttribute("aria-label", reader.say("family.missed.move.full", name, when(reader, to)));
            row.add(button);
        }
        return row;
    }

    private Component movedBack(Reader reader, Moved moved, boolean may, Runnable changed) {
        var name = reader.text(moved.exercise().name());
        var row = Tags.div(
                "hw-missed-row",
                Tags.span(
                        "",
                        reader.say(
                                "family.missed.is-moved",
                                name,
                                weekday(reader, moved.from()),
                                when(reader, moved.to(), moved.start()))));
        if (may) {
            var button = Tags.button("plain", reader.say("family.missed.back"), pressed -> {
                try {
                    missed.takeBack(reader.viewer(), reader.id(), moved.key());
                    Told.done(reader.say("family.missed.is-back", name, weekday(reader, moved.from())));
                } catch (Overtaken overtaken) {
                    Told.couldNot(reader.say("family.missed.overtaken"));
                }
                changed.run();
            });
            button.getElement().setAttribute("aria-label", reader.say("family.missed.back") + ": " + name);
            row.add(button);
        }
        return row;
    }

    private static HtmlContainer leftOut(Reader reader, List<Offer> skips) {
        var list = Bits.el("ul", "hw-missed-out");
        skips.forEach(offer -> list.add(Bits.el(
                "li",
                "",
                reader.say(
                        "family.missed.skip",
                        reader.text(offer.exercise().name()),
                        weekday(reader, offer.day()),
                        reader.say("family.missed.why." + offer.why().orElseThrow())))));
        return Bits.el(
                "details", "hw-unfold", Bits.el("summary", "", reader.say("family.missed.skips", skips.size())), list);
    }

    private static String weekday(Reader reader, LocalDate day) {
        return reader.words().weekday(reader.language(), day);
    }

    private static String when(Reader reader, To to) {
        return when(reader, to.day(), to.timed() ? Optional.of(to.start()) : Optional.empty());
    }

    /** "Thursday, 5:00 PM", or the day alone. */
    static String when(Reader reader, LocalDate day, Optional<LocalTime> start) {
        var name = day.equals(reader.today()) ? reader.say("family.missed.today") : weekday(reader, day);
        return start.map(time -> reader.say("family.missed.at", name, reader.time(day.atTime(time))))
                .orElse(name);
    }
}
