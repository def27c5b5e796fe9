package org.hearthway.equipment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Item;
import org.hearthway.parts.Tags;

/**
 * One thing in the list: what it is, when it is worn, what comes next, what was seen.
 *
 * @param today the clinic's day
 * @param may whether the person may record
 */
record ThingCard(Labels labels, LocalDate today, boolean may, ThingCard.Acts acts) {

    /** What a card can set off. */
    interface Acts {
        void change(CastSeries series);

        void edit(Item item);

        void look(Item item, Item.What what);
    }

    private static final int LOOKS_SHOWN = 4;

    Component cast(CastSeries series) {
        var data = series.data();
        var card = Tags.div(
                "hw-sheet",
                Tags.h2("u-xl", say("equipment.cast.at", labels.where(data.place(), data.side()))),
                label(data.ended().isEmpty(), "equipment.cast.running", "equipment.cast.over"));
        series.next()
                .ifPresent(next -> due(
                        card,
                        next,
                        series.nextIsLast()
                                ? "equipment.cast.next-off"
                                : data.casts().isEmpty() ? "equipment.cast.next-first" : "equipment.cast.next"));
        card.add(Tags.p(
                "hw-sub",
                data.lastOff()
                        .map(off -> say(
                                "equipment.cast.plan-until",
                                labels.day(data.from()),
                                data.everyDays(),
                                labels.day(off)))
                        .orElseGet(() -> say("equipment.cast.plan", labels.day(data.from()), data.everyDays()))));
        data.casts().forEach(worn -> card.add(worn(worn)));
        if (may) {
            card.add(Tags.div(
                    "u-row u-wrap u-mt3",
                    Tags.button("plain", say("equipment.cast.record"), pressed -> acts.change(series))));
        }
        return card;
    }

    private Component worn(CastSeries.Cast cast) {
        var line = Tags.p("", "");
        line.add(Tags.span(
                "hw-b",
                cast.off()
                        .map(off -> say("equipment.cast.worn", labels.day(cast.on()), labels.day(off)))
                        .orElseGet(() -> say("equipment.cast.worn-since", labels.day(cast.on())))));
        cast.degrees().ifPresent(angle -> line.add(Tags.span("u-ml3", say("equipment.cast.angle", angle))));
        if (!cast.skin().isBlank()) {
            line.add(Tags.span("hw-sub u-ml3", say("equipment.cast.skin", cast.skin())));
        }
        return line;
    }

    Component item(Item item) {
        var data = item.data();
        var card = Tags.div(
                "hw-sheet",
                Tags.h2("u-xl", labels.name(item)),
                label(item.isInUse(), "equipment.in-use", "equipment.given-back"));
        labels.wear(data.wear()).ifPresent(wear -> card.add(Tags.p("hw-b", wear)));
        if (!data.wear().buildUp().isBlank()) {
            card.add(Tags.p("u-lines", say("equipment.build-up", data.wear().buildUp())));
        }
        for (var what : Item.What.values()) {
            item.due(what).ifPresent(day -> due(card, day, "equipment.next." + what));
        }
        card.add(Tags.p("hw-sub", dates(data)));
        data.looks().stream()
                .skip(Math.max(0, data.looks().size() - LOOKS_SHOWN))
                .forEach(look -> card.add(looked(look)));
        if (may) {
            card.add(acts(item));
        }
        return card;
    }

    private Component acts(Item item) {
        var row = Tags.div("u-row u-wrap u-mt3");
        for (var what : Item.What.values()) {
            if (item.due(what).isPresent()) {
                row.add(Tags.button("plain", say("equipment.look." + what), pressed -> acts.look(item, what)));
            }
        }
        row.add(Tags.button("text", say("equipment.change"), pressed -> acts.edit(item)));
        return row;
    }

    private String dates(Item.Data data) {
        var given = say("equipment.given", labels.day(data.given()));
        var lent = data.lentUntil().map(until -> " · " + say("equipment.lent", labels.day(until)));
        var back = data.back().map(day -> " · " + say("equipment.back", labels.day(day)));
        return given + lent.orElse("") + back.orElse("");
    }

    private Component looked(Item.Look look) {
        var line = Tags.p("", "");
        line.add(
                Tags.span("hw-b", say("equipment.looked." + look.what(), labels.day(look.day()))),
                Tags.span("u-ml3", say("equipment.outcome." + look.what() + "." + look.outcome())));
        Optional.of(look.note())
                .filter(note -> !note.isBlank())
                .ifPresent(note -> line.add(Tags.span("hw-sub u-ml3", note)));
        return line;
    }

    private void due(Div card, LocalDate day, String key) {
        var line = Tags.p("u-mt3", "");
        line.add(Tags.span("", say(key, labels.day(day))));
        if (day.isBefore(today)) {
            line.add(Tags.span("hw-label ember u-ml3", say("equipment.passed")));
        }
        card.add(line);
    }

    private Component label(boolean now, String is, String was) {
        return Tags.span(now ? "hw-label moss" : "hw-label line", say(now ? is : was));
    }

    private String say(String key, Object... args) {
        return labels.say(key, args);
    }
}
