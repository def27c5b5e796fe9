package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import java.util.Optional;
import org.hearthway.parts.Tags;
import org.hearthway.pump.PumpBook.Line;
import org.hearthway.pump.PumpEntry;

/**
 * Every line of the book, the last entered first: what was done, who entered it and who checked it. What waits for its
 * second check shows no figures to anybody but the one who entered it.
 */
final class PumpHistory extends Div {

    private final transient PumpFigures figures;
    private final transient PumpWords say;
    private final transient PumpReading reading;
    private final transient PumpActs acts;

    PumpHistory(PumpFigures figures, PumpReading reading, PumpActs acts) {
        this.figures = figures;
        this.say = figures.words();
        this.reading = reading;
        this.acts = acts;
        addClassName("u-mt5");
        add(Tags.div("hw-colh", Tags.h2("", say.say("pump.book.title"))));
        if (reading.history().isEmpty()) {
            add(Tags.p("hw-quiet", say.say("pump.book.none")));
            return;
        }
        var list = new OrderedList();
        list.addClassName("hw-book");
        reading.history().forEach(line -> list.add(item(line)));
        add(list);
    }

    private ListItem item(Line line) {
        var item = new ListItem();
        var head = Tags.div("hw-bookline");
        var what =
                Tags.span("hw-b", say.say("pump.book.kind." + line.kind(), line.number(), figures.moment(line.at())));
        if (line.superseded().isPresent()) {
            what.addClassName("u-struck");
        }
        head.add(what);
        if (line.emergency()) {
            head.add(Tags.span("hw-label ember", say.say("pump.book.emergency")));
        }
        state(line).ifPresent(head::add);
        acts(line).ifPresent(head::add);
        item.add(head, Tags.p("hw-sub", people(line)));
        line.superseded().ifPresent(number -> item.add(Tags.p("hw-sub", superseded(number))));
        line.entry().ifPresent(entry -> {
            if (!entry.unusual().isEmpty()) {
                item.add(Tags.p("", say.say("pump.book.unusual", entry.unusual())));
            }
            var unfold = new NativeDetails(say.say("pump.book.figures"));
            unfold.setContent(new EntryFigures(figures, entry));
            item.add(unfold);
        });
        if (line.waits() && line.entry().isEmpty()) {
            item.add(Tags.p("hw-sub", say.say("pump.book.hidden")));
        }
        return item;
    }

    private Optional<Span> state(Line line) {
        if (line.superseded().isPresent()) {
            return Optional.of(Tags.span("hw-label line", say.say("pump.book.superseded")));
        }
        if (line.waits()) {
            return Optional.of(Tags.span("hw-label ember", say.say("pump.book.waits")));
        }
        return line.entry()
                .filter(PumpEntry::isSure)
                .map(entry -> Tags.span(
                        "hw-label moss", say.say(entry.carried() ? "pump.book.carried" : "pump.book.checked")));
    }

    private String people(Line line) {
        var entered = say.say("pump.book.entered", reading.name(line.by()), figures.moment(line.entered()));
        return line.entry()
                .flatMap(PumpEntry::check)
                .map(check -> say.say(
                        "pump.book.both",
                        entered,
                        say.say("pump.book.checked-by", reading.name(check.by()), figures.moment(check.at()))))
                .orElse(entered);
    }

    /** By which line, and why; the reason stays hidden while that line waits for somebody else's check. */
    private String superseded(long number) {
        var by = say.say("pump.book.superseded-by", number);
        return reading.history().stream()
                .filter(line -> line.number() == number)
                .findFirst()
                .flatMap(Line::entry)
                .flatMap(PumpEntry::corrects)
                .map(correction -> say.say("pump.book.both", by, correction.reason()))
                .orElse(by);
    }

    private Optional<Div> acts(Line line) {
        if (!reading.mayRecord() || line.superseded().isPresent()) {
            return Optional.empty();
        }
        var row = Tags.div("u-row hw-bookacts");
        if (line.waits() && line.entry().isEmpty()) {
            row.add(Tags.button("soft", say.say("pump.book.check"), pressed -> acts.check(line.number())));
        }
        if (line.entry().isPresent()) {
            row.add(Tags.button("text", say.say("pump.book.correct"), pressed -> acts.correct(line.number())));
        }
        return Optional.of(row);
    }
}
