package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Casts;
import org.hearthway.equipment.Equipment;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Kind.Sort;
import org.hearthway.equipment.Place;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.springframework.core.annotation.Order;

/** What the child wears and uses: when, how to look at the skin, which day comes next, and when to call. */
@org.springframework.stereotype.Component
@Order(40)
class WornSection implements AlongsideSection {

    /** The signs of skin and toes, most urgent first. */
    private static final List<String> OF_A_CAST = List.of("cast-blue-toes", "splint-skin");

    private static final List<String> OF_A_SPLINT = List.of("splint-skin");

    private final Casts casts;
    private final Equipment equipment;
    private final Signs signs;
    private final Pause pauses;

    WornSection(Casts casts, Equipment equipment, Signs signs, Pause pauses) {
        this.casts = casts;
        this.equipment = equipment;
        this.signs = signs;
        this.pauses = pauses;
    }

    @Override
    public Optional<Component> draw(Reader reader) {
        var running = casts.of(reader.viewer(), reader.id()).stream()
                .filter(series -> series.data().ended().isEmpty())
                .toList();
        var items = equipment.of(reader.viewer(), reader.id()).stream()
                .filter(Item::isInUse)
                .sorted(Comparator.comparing(item -> item.kind().sort()))
                .toList();
        if (running.isEmpty() && items.isEmpty()) {
            return Optional.empty();
        }
        var asks = !pauses.asksNothing(reader);
        var section = Tags.section("hw-stack", reader.say("family.worn.title"));
        section.add(Tags.h2("hw-h2", reader.say("family.worn.title")));
        running.forEach(series -> section.add(cast(reader, series, asks)));
        items.forEach(item -> section.add(item(reader, item, asks)));
        return Optional.of(section);
    }

    private Component cast(Reader reader, CastSeries series, boolean asks) {
        var data = series.data();
        var name = casts.kind().map(kind -> reader.text(kind.name()));
        var sheet = sheet(reader, name.orElse(""), Optional.of(data.place()), Optional.of(data.side()));
        series.next()
                .filter(day -> asks && !day.isBefore(reader.today()))
                .ifPresent(day -> sheet.add(Tags.p(
                        "hw-b u-my2",
                        reader.say(
                                series.nextIsLast()
                                        ? "family.worn.cast.off"
                                        : data.casts().isEmpty() ? "family.worn.cast.first" : "family.worn.cast.next",
                                PathWords.date(reader, day)))));
        casts.kind().ifPresent(kind -> says(sheet, reader, kind.says()));
        signs(sheet, reader, OF_A_CAST);
        return sheet;
    }

    private Component item(Reader reader, Item item, boolean asks) {
        var data = item.data();
        var sheet = sheet(reader, reader.text(item.kind().name()), data.place(), data.side());
        var wear = Tags.div("u-my2");
        data.wear().byDay().ifPresent(hours -> wear.add(Tags.p("hw-b", reader.say("equipment.wear.day", hours))));
        data.wear().byNight().ifPresent(hours -> wear.add(Tags.p("hw-b", reader.say("equipment.wear.night", hours))));
        lines(data.wear().schedule()).forEach(line -> wear.add(Tags.p("", line)));
        sheet.add(wear);
        if (!data.wear().buildUp().isBlank()) {
            var steps = Bits.el("ol", "hw-steps");
            lines(data.wear().buildUp()).forEach(line -> steps.add(Bits.el("li", "", Tags.span("", line))));
            sheet.add(Tags.p("hw-b u-mt3", reader.say("family.worn.build-up")), steps);
        }
        says(sheet, reader, item.kind().says());
        if (asks) {
            for (var what : Item.What.values()) {
                item.due(what)
                        .map(day -> day.isBefore(reader.today()) ? reader.today() : day)
                        .ifPresent(day -> sheet.add(
                                Tags.p("u-mt1", reader.say("family.worn.look." + what, PathWords.date(reader, day)))));
            }
            data.lentUntil()
                    .ifPresent(until ->
                            sheet.add(Tags.p("u-mt1", reader.say("family.worn.lent", PathWords.date(reader, until)))));
        }
        if (item.kind().sort() == Sort.WORN) {
            signs(sheet, reader, OF_A_SPLINT);
        }
        return sheet;
    }

    private static HtmlContainer sheet(Reader reader, String name, Optional<Place> place, Optional<Place.Side> side) {
        var sheet = Bits.el("article", "hw-sheet", Bits.el("h3", "u-xl", name));
        place.ifPresent(at -> sheet.add(Tags.p(
                "hw-quiet",
                side.map(which -> reader.say(
                                "equipment.where",
                                reader.say("equipment.side." + which),
                                reader.say("equipment.place." + at)))
                        .orElseGet(() -> reader.say("equipment.place." + at)))));
        return sheet;
    }

    private static Stream<String> lines(String typed) {
        return typed.lines().map(String::strip).filter(line -> !line.isEmpty());
    }

    private static void says(HtmlContainer sheet, Reader reader, List<Bilingual> says) {
        if (says.isEmpty()) {
            return;
        }
        var list = Bits.el("ul", "hw-list u-my2");
        says.forEach(text -> list.add(Bits.el("li", "", Tags.span("", reader.text(text)))));
        sheet.add(list);
    }

    /** The signs in the clinic's words, each with its urgency, and the way to the numbers. */
    private void signs(HtmlContainer sheet, Reader reader, List<String> ids) {
        var shown = signs.all();
        ids.stream()
                .flatMap(id -> shown.stream().filter(sign -> sign.id().equals(id)))
                .forEach(sign -> sheet.add(Bits.strip(
                        sign.urgency() == Sign.Urgency.HOURS ? "quiet u-mt1" : "ember u-mt1",
                        CallRows.icon(sign.urgency()),
                        Bits.led(reader.text(sign.says()), reader.say("family.worn.call." + sign.urgency())))));
        var call = Tags.link("hw-button plain wide u-mt3", reader.address("call"), Icon.PHONE.draw());
        call.add(Tags.span("", reader.say("family.place.call")));
        sheet.add(call);
    }
}
