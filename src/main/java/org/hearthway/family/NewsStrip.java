package org.hearthway.family;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.audit.WhatChanged;
import org.hearthway.audit.WhatChanged.Told;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.springframework.stereotype.Component;

/** Tells what changed in the plan since the person was last here; it can be put away. */
class NewsStrip extends Div {

    /** How many changes are told in full. */
    static final int TOLD = 3;

    private static final String REFILL = "PumpEntryChecked";

    /** Where the reason of a kind of change stands: a stage tells why then, a refill why these days; or what is new. */
    private static final Map<String, String> REASONS = Map.of(
            "PathChanged",
            "path",
            REFILL,
            "dates",
            "StimulatorReadingConfirmed",
            "dates",
            "MedicineConfirmed",
            Alongside.ADDRESS,
            "TaperConfirmed",
            Alongside.ADDRESS,
            "ToxinSessionRecorded",
            Alongside.ADDRESS);

    /** Where the news come from. */
    @Component
    static class Source {

        private final WhatChanged changes;
        private final LastSeen lastSeen;
        private final Pumps pumps;

        Source(WhatChanged changes, LastSeen lastSeen, Pumps pumps) {
            this.changes = changes;
            this.lastSeen = lastSeen;
            this.pumps = pumps;
        }

        /** The strip, when there is something new; opening it counts as being here. */
        Optional<NewsStrip> strip(Reader reader) {
            var since = lastSeen.open(reader);
            var all = changes.since(reader.viewer(), reader.id(), since);
            var told = all.stream().filter(change -> holds(reader, change, all)).toList();
            return told.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new NewsStrip(
                            reader, told, reader.local(since).toLocalDate(), () -> lastSeen.putAway(reader)));
        }

        /** Of the days to refill by only the last is told, and only while one holds: others are of a fill of before. */
        private boolean holds(Reader reader, Told change, List<Told> all) {
            return !change.kind().equals(REFILL)
                    || (all.stream()
                                    .noneMatch(other -> other.kind().equals(REFILL)
                                            && other.at().isAfter(change.at()))
                            && pumps.refill(reader.viewer(), reader.id())
                                    .flatMap(Refill::window)
                                    .isPresent());
        }
    }

    NewsStrip(Reader reader, List<Told> told, LocalDate since, Runnable putAway) {
        addClassName("hw-strip");
        addClassName("hw-news");
        getElement().setAttribute("role", "note");
        getElement().setAttribute("aria-label", reader.say("family.news"));
        var words = Tags.div("", Bits.el("b", "", since(reader, since)));
        told.stream().limit(TOLD).forEach(change -> words.add(line(reader, change)));
        if (told.size() > TOLD) {
            words.add(line(reader.say("family.news.more", told.size() - TOLD), Optional.empty()));
        }
        var hide = Tags.round(Icon.CLOSE, reader.say("family.news.hide"), pressed -> {
            putAway.run();
            removeFromParent();
        });
        add(Icon.INFO.draw(), words, hide);
    }

    private static HtmlContainer line(Reader reader, Told change) {
        return line(
                reader.text(change.words()),
                Optional.ofNullable(REASONS.get(change.kind()))
                        .map(place -> Tags.link("", reader.address(place), reader.say(lookFor(place)))));
    }

    private static String lookFor(String place) {
        return place.equals(Alongside.ADDRESS) ? "family.news.look" : "family.news.why";
    }

    private static HtmlContainer line(String words, Optional<Anchor> why) {
        var line = Bits.el("span", "", " " + words);
        why.ifPresent(link -> line.add(new Span(" "), link));
        return line;
    }

    /** "New since Tuesday:", or the date when that is more than six days ago. */
    static String since(Reader reader, LocalDate since) {
        var days = ChronoUnit.DAYS.between(since, reader.today());
        if (days <= 0) {
            return reader.say("family.news.today");
        }
        if (days == 1) {
            return reader.say("family.news.yesterday");
        }
        return days < 7
                ? reader.say("family.news.since", reader.words().weekday(reader.language(), since))
                : reader.say("family.news.since", reader.monthDay(since));
    }
}
